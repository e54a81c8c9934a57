#include "ui/words/sentence_book.hpp"

#include <algorithm>
#include <array>
#include <functional>

namespace endplate::ui {
namespace {

// Parts of a row that are looked for as one.
constexpr qsizetype kLongestRun = 4;

const QRegularExpression& place_mark() {
  static const QRegularExpression mark(R"(%([1-9])|\{([1-9])\})");
  return mark;
}

int number_of(const QRegularExpressionMatch& mark) {
  return (mark.captured(1) + mark.captured(2)).toInt();
}

QString first_word(const QString& text) {
  return text.section(' ', 0, 0);
}

bool has_letters(const QString& text) {
  return std::ranges::any_of(text, [](QChar c) { return c.isLetter(); });
}

// "C5", "M4", "2026-06-01", "7 mm", "san_to_mcn", "/injuries/0", "ECRB", "Baltzer 2016", "'x'".
bool is_figure_or_key(const QString& text) {
  static const QRegularExpression same(
      R"(-?[\d.,]+ (mm|cm|mm2|kg|%)|\S*[\d_/]\S*|[A-Z]{2,5}|[A-Z][\w-]+( et al\.)? \d{4}|".*"|'.*')");
  static const QRegularExpression whole(QRegularExpression::anchoredPattern(same.pattern()));
  return whole.match(text).hasMatch();
}

qsizetype fixed_letters(const SentencePair& pair) {
  QString fixed = pair.english;
  return fixed.remove(place_mark()).size();
}

}  // namespace

SentenceBook::Template SentenceBook::template_of(const SentencePair& pair) {
  Template one;
  one.other = pair.other;
  QString shortest;
  QString longest;
  qsizetype from = 0;
  const auto add = [&](const QString& fixed) {
    shortest += QRegularExpression::escape(fixed);
    longest += QRegularExpression::escape(fixed);
    if (fixed.size() > one.fixed.size()) one.fixed = fixed;
  };
  for (auto marks = place_mark().globalMatch(pair.english); marks.hasNext();) {
    const QRegularExpressionMatch mark = marks.next();
    add(pair.english.mid(from, mark.capturedStart() - from));
    shortest += "(.+?)";
    longest += "(.+)";
    one.places.push_back({number_of(mark), mark.captured().startsWith('{')});
    from = mark.capturedEnd();
  }
  add(pair.english.mid(from));
  one.shortest.setPattern(QRegularExpression::anchoredPattern(shortest));
  one.longest.setPattern(QRegularExpression::anchoredPattern(longest));
  return one;
}

SentenceBook::SentenceBook(const std::vector<SentencePair>& pairs) {
  std::vector<const SentencePair*> with_places;
  for (const SentencePair& pair : pairs) {
    if (pair.english.contains(place_mark())) {
      with_places.push_back(&pair);
    } else {
      whole_.insert(pair.english, pair.other);
    }
  }
  std::ranges::stable_sort(with_places, std::greater(),
                           [](const SentencePair* pair) { return fixed_letters(*pair); });
  for (const SentencePair* pair : with_places) {
    const int index = static_cast<int>(templates_.size());
    templates_.push_back(template_of(*pair));
    const QString word = first_word(pair->english);
    if (word.contains(place_mark())) {
      open_.push_back(index);
    } else {
      by_opening_[word].push_back(index);
    }
  }
}

bool SentenceBook::stays(const QString& words) const {
  return !has_letters(words) || names_.contains(words) || is_figure_or_key(words);
}

std::optional<QString> SentenceBook::tell(const QString& english) const {
  Memo memo;
  return english.isEmpty() ? std::nullopt : tell_at(english, memo);
}

// Comes to an end, since what is asked again is always shorter.
std::optional<QString> SentenceBook::tell_at(const QString& english, Memo& memo) const {
  if (const auto known = memo.constFind(english); known != memo.cend()) return *known;
  auto told = tell_one(english, memo);
  if (!told) told = tell_parts(english, memo);
  memo.insert(english, told);
  return told;
}

// Without taking it apart.
std::optional<QString> SentenceBook::tell_one(const QString& english, Memo& memo) const {
  if (const auto found = whole_.constFind(english); found != whole_.constEnd()) return *found;
  if (stays(english)) return english;
  std::vector<int> likely = open_;
  if (const auto named = by_opening_.constFind(first_word(english)); named != by_opening_.cend()) {
    likely.insert(likely.end(), named->begin(), named->end());
    std::ranges::sort(likely);
  }
  for (const int index : likely) {
    const Template& one = templates_[static_cast<std::size_t>(index)];
    if (!english.contains(one.fixed)) continue;
    if (auto text = fill(one, one.shortest, english, memo)) return text;
    if (one.places.size() < 2) continue;
    if (auto text = fill(one, one.longest, english, memo)) return text;
  }
  return std::nullopt;
}

std::optional<QString> SentenceBook::fill(const Template& one, const QRegularExpression& pattern,
                                          const QString& english, Memo& memo) const {
  const QRegularExpressionMatch match = pattern.match(english);
  if (!match.hasMatch()) return std::nullopt;
  std::array<QString, 10> words;
  for (std::size_t i = 0; i < one.places.size(); ++i) {
    const QString captured = match.captured(static_cast<int>(i) + 1);
    const auto told = one.places[i].to_the_letter ? captured : tell_at(captured, memo);
    if (!told) return std::nullopt;
    words[static_cast<std::size_t>(one.places[i].number)] = *told;
  }
  QString text;
  qsizetype from = 0;
  for (auto marks = place_mark().globalMatch(one.other); marks.hasNext();) {
    const QRegularExpressionMatch mark = marks.next();
    text += one.other.mid(from, mark.capturedStart() - from);
    text += words[static_cast<std::size_t>(number_of(mark))];
    from = mark.capturedEnd();
  }
  return text + one.other.mid(from);
}

std::optional<QString> SentenceBook::tell_parts(const QString& english, Memo& memo) const {
  if (english.size() > 1 && english.endsWith('.')) {
    auto told = tell_at(english.chopped(1), memo);
    if (told && !told->endsWith('.')) *told += '.';
    return told;
  }
  for (const char* between : {". ", "; ", ", ", " and "}) {
    if (english.contains(between)) {
      if (auto told = tell_row(english.split(between), between, memo)) return told;
    }
  }
  return std::nullopt;
}

// The longest run of parts that is known comes first: a sentence may hold what divides sentences.
std::optional<QString> SentenceBook::tell_row(const QStringList& parts, const QString& between,
                                              Memo& memo) const {
  QStringList texts;
  for (qsizetype from = 0; from < parts.size();) {
    std::optional<QString> told;
    qsizetype count = std::min(parts.size() - from, kLongestRun);
    for (; count > 1; --count) {
      if (count == parts.size()) continue;  // the row itself
      told = tell_one(QStringList(parts.mid(from, count)).join(between), memo);
      if (told) break;
    }
    if (!told) told = tell_at(parts[from], memo);
    if (!told) return std::nullopt;
    texts << *told;
    from += count;
  }
  const QString joint = between.trimmed();
  return texts.join(has_letters(joint) ? ' ' + whole_.value(joint, joint) + ' ' : between);
}

}  // namespace endplate::ui
