#pragma once
#include <QStringList>

namespace endplate::followup {
struct FollowupAnswer;
}

namespace endplate::ui {

// Whether the nerve is on course by what was seen since: call, chances, Tinel points and rate of
// each lesion, then the remarks on the findings.
QStringList course_words(const followup::FollowupAnswer& answer);

}  // namespace endplate::ui
