#include "ui/panels/result_words.hpp"

#include <QCoreApplication>
#include <QStringList>

#include "ui/words/model_words.hpp"
#include "ui/words/words.hpp"

namespace endplate::ui {
namespace {

QString tr(const char* text) {
  return QCoreApplication::translate("endplate::ui", text);
}

QString scale_words(const std::string& scale) {
  if (scale == "whole-nerve grade") return tr("nerve grade 3");
  constexpr std::size_t kLongest = 14;
  return scale == "other" || scale.size() > kLongest ? tr("own scale") : text_of(scale);
}

QString exact_share(double share) {
  return QString::number(100.0 * share, 'f', 0);
}

}  // namespace

QString joined_words(const std::vector<std::string>& parts, const char* between) {
  QStringList list;
  for (const std::string& part : parts) list << told(part);
  return list.join(between);
}

QString published_words(const transfer::PublishedResult& result) {
  const QString scale = scale_words(result.scale);
  if (result.count && result.n) {
    return tr("%1 of %2 %3").arg(*result.count, 0, 'f', 0).arg(*result.n, 0, 'f', 0).arg(scale);
  }
  if (result.share) return exact_share(*result.share) + " % " + scale;
  if (result.low && result.high) {
    return tr("%1 to %2 % %3").arg(exact_share(*result.low), exact_share(*result.high), scale);
  }
  return tr("none found");
}

Cell verdict_cell(transfer::Verdict verdict) {
  switch (verdict) {
    case transfer::Verdict::feasible:
      return {tr("feasible"), 0, {}, Tone::whole};
    case transfer::Verdict::marginal:
      return {tr("marginal"), 1, {}, Tone::weak};
    case transfer::Verdict::not_judged:
      return {tr("not judged"), 2, {}, Tone::alert};
    case transfer::Verdict::not_feasible:
      break;
  }
  return {tr("not feasible"), 3, {}, Tone::lost};
}

}  // namespace endplate::ui
