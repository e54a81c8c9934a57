#include "ui/lecture/lecture.hpp"

#include <QJsonArray>
#include <QJsonDocument>

namespace endplate::ui {
namespace {

constexpr int kVersion = 1;

std::string text_of(const QString& text) {
  return text.toStdString();
}

class Reader {
 public:
  explicit Reader(const LectureVocabulary& vocabulary) : vocabulary_(vocabulary) {}

  Expected<Lecture> read(const QByteArray& json) {
    QJsonParseError fault;
    const QJsonDocument document = QJsonDocument::fromJson(json, &fault);
    if (!document.isObject()) {
      wrong(QString("/ (byte %1)").arg(fault.offset), "this is no JSON object",
            "Begin with { and give \"endplate_lecture\": 1, a title and steps");
      return std::unexpected(Error{Fault::input, std::move(problems_)});
    }
    QJsonObject object = document.object();
    Lecture lecture;
    if (object.take("endplate_lecture").toInt() != kVersion) {
      wrong("/endplate_lecture", "no lecture of a version that this program reads",
            "Write \"endplate_lecture\": 1");
    }
    lecture.title = object.take("title").toString();
    if (lecture.title.isEmpty()) wrong("/title", "missing", "Give the lecture a title");
    const QJsonValue steps = object.take("steps");
    if (!steps.isArray() || steps.toArray().isEmpty()) {
      wrong("/steps", "no steps", "Give a list with one step at the least");
    }
    const QJsonArray list = steps.toArray();
    for (qsizetype i = 0; i < list.size(); ++i) {
      place_ = QString("/steps/%1").arg(i);
      lecture.steps.push_back(read_step(list[i].toObject()));
    }
    lecture.other = object;
    if (!problems_.empty()) return std::unexpected(Error{Fault::input, std::move(problems_)});
    return lecture;
  }

 private:
  void wrong(const QString& place, const char* what, const QString& mend) {
    problems_.push_back({text_of(place), what, text_of(mend)});
  }

  QString one_of(QJsonObject& object, const char* key, const QStringList& words,
                 const QString& otherwise) {
    const QString word = object.take(key).toString(otherwise);
    if (!words.contains(word)) {
      wrong(place_ + "/" + key, "not a word of lectures", "One of: " + words.join(", "));
    }
    return word;
  }

  QStringList list_of(QJsonObject& object, const char* key, const QStringList* words,
                      const char* mend) {
    QStringList list;
    const QJsonArray values = object.take(key).toArray();
    for (qsizetype i = 0; i < values.size(); ++i) {
      const QString word = values[i].toString();
      if (words != nullptr && !words->contains(word)) {
        wrong(place_ + "/" + key + QString("/%1").arg(i), "not known", mend);
      }
      list.push_back(word);
    }
    return list;
  }

  LectureStep read_step(QJsonObject object) {
    LectureStep step;
    step.kind = static_cast<StepKind>(std::max<qsizetype>(
        0, lecture_kinds().indexOf(one_of(object, "show", lecture_kinds(), {}))));
    step.title = object.take("title").toString();
    if (step.title.isEmpty()) wrong(place_ + "/title", "missing", "Give the step a title");
    step.say = list_of(object, "say", nullptr, "");
    step.nerve = object.take("nerve").toString();
    if (step.nerve.isEmpty() != (step.kind == StepKind::text)) {
      wrong(place_ + "/nerve", "every step but one of text is about one nerve",
            "Name a nerve, or write \"show\": \"text\"");
    } else if (!step.nerve.isEmpty() && !vocabulary_.nerves.contains(step.nerve)) {
      wrong(place_ + "/nerve", "no nerve of the tables", "Use the English standard term");
    }
    step.nerves = list_of(object, "nerves", &vocabulary_.nerves, "Use the English standard term");
    step.view = one_of(object, "view", lecture_views(), lecture_views().front());
    step.region = one_of(object, "region", lecture_regions(), lecture_regions().front());
    step.layers = list_of(object, "layers", &lecture_layers(),
                          "Layers are skin, bones, muscles, nerves and landmarks");
    step.rules = list_of(object, "rules", &vocabulary_.rules, "Use an id of approaches.csv");
    const QJsonObject pose = object.take("pose").toObject();
    for (auto at = pose.begin(); at != pose.end(); ++at) {
      if (!at.key().endsWith("_deg") || !at.value().isDouble()) {
        wrong(place_ + "/pose/" + at.key(), "no joint angle",
              "Write keys of the pose as in a case file, in degrees");
      }
      step.pose_deg[at.key()] = at.value().toDouble();
    }
    step.other = object;
    return step;
  }

  const LectureVocabulary& vocabulary_;
  QString place_;
  std::vector<Problem> problems_;
};

void put(QJsonObject& object, const char* key, const QStringList& list) {
  if (!list.isEmpty()) object[key] = QJsonArray::fromStringList(list);
}

}  // namespace

const QStringList& lecture_views() {
  static const QStringList words{"front", "back", "lateral", "medial"};
  return words;
}

const QStringList& lecture_regions() {
  static const QStringList words{"whole", "shoulder", "arm", "elbow", "forearm", "hand"};
  return words;
}

const QStringList& lecture_layers() {
  static const QStringList words{"skin", "bones", "muscles", "nerves", "landmarks"};
  return words;
}

const QStringList& lecture_kinds() {
  static const QStringList words{"text", "course", "muscles", "skin", "exceptions", "danger"};
  return words;
}

Expected<Lecture> read_lecture(const QByteArray& json, const LectureVocabulary& vocabulary) {
  return Reader(vocabulary).read(json);
}

QByteArray write_lecture(const Lecture& lecture) {
  QJsonArray steps;
  for (const LectureStep& step : lecture.steps) {
    QJsonObject object = step.other;
    object["show"] = lecture_kinds()[static_cast<qsizetype>(step.kind)];
    object["title"] = step.title;
    put(object, "say", step.say);
    if (!step.nerve.isEmpty()) object["nerve"] = step.nerve;
    put(object, "nerves", step.nerves);
    object["view"] = step.view;
    object["region"] = step.region;
    put(object, "layers", step.layers);
    put(object, "rules", step.rules);
    if (!step.pose_deg.isEmpty()) {
      QJsonObject pose;
      for (auto at = step.pose_deg.begin(); at != step.pose_deg.end(); ++at) {
        pose[at.key()] = at.value();
      }
      object["pose"] = pose;
    }
    steps.push_back(object);
  }
  QJsonObject object = lecture.other;
  object["endplate_lecture"] = kVersion;
  object["title"] = lecture.title;
  object["steps"] = steps;
  return QJsonDocument(object).toJson(QJsonDocument::Indented);
}

}  // namespace endplate::ui
