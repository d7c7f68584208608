#include "core/checks/running_state.h"

#include <algorithm>

namespace pumpwright {

namespace {

std::vector<TimeSpan> spansOf(const Survey& survey, const PartId& part, const Load& load, double bridged_s) {
    const Channel* current =
        survey.recording() == nullptr ? nullptr : survey.recording()->part(part, probe::kCurrent);
    if (current == nullptr || load.running_A <= 0) {
        return {};
    }
    return spansAbove(*current, kRunningShare * load.running_A, bridged_s);
}

} // namespace

std::vector<TimeSpan> runningSpans(const Survey& survey, const PartId& part, const Load& load) {
    return spansOf(survey, part, load, kRunBridged_s);
}

std::optional<TimeSpan> settledRun(const Survey& survey, const PartId& part, const Load& load) {
    const std::vector<TimeSpan> spans = spansOf(survey, part, load, 0);
    const auto longest =
        std::max_element(spans.begin(), spans.end(),
                         [](const TimeSpan& a, const TimeSpan& b) { return a.length_s() < b.length_s(); });
    if (longest == spans.end() || longest->length_s() <= 0) {
        return std::nullopt;
    }
    return TimeSpan{longest->from_s + longest->length_s() / 2, longest->to_s};
}

} // namespace pumpwright
