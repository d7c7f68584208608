#include "core/checks/carried_current.h"
#include "core/checks/drive_reading.h"
#include "core/checks/fuse_remedy.h"
#include "core/checks/standard_size.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

/// When the fuse opened in the drive.
std::optional<double> openedAt_s(const Survey& survey, const PartId& fuse) {
    const Channel* share =
        survey.recording() == nullptr ? nullptr : survey.recording()->part(fuse, probe::kOpenShare);
    if (share == nullptr) {
        return std::nullopt;
    }
    const std::vector<TimeSpan> open = spansAbove(*share, 1);
    return open.empty() ? std::nullopt : std::optional(open.front().from_s);
}

Remedy remedyFor(const Survey& survey, const Branch& fuse, double current_A) {
    const std::string name = nameOf(survey.circuit(), fuse.part);
    const double wanted_A = std::max(current_A / survey.circuit().limits.continuousFuseShare,
                                     1.01 * survey.features(fuse.part).fuse->rating_A);
    const auto rating_A = fuseAtLeast_A(wanted_A);
    if (!rating_A) {
        return {say("Share what {} feeds between several fuses.", name), {}};
    }
    return fuseWithWires(survey, fuse, *rating_A);
}

Finding findingFor(const Rule& rule, const Survey& survey, const Branch& fuse, const CarriedCurrent& current,
                   const std::optional<double>& openedAt) {
    const std::string name = nameOf(survey.circuit(), fuse.part);
    const double rating_A = survey.features(fuse.part).fuse->rating_A;
    const double share = survey.circuit().limits.continuousFuseShare;
    Finding finding = newFinding(rule);
    finding.parts = {fuse.part};
    finding.value = current.value_A;
    finding.limit = share * rating_A;
    finding.kind = QuantityKind::Current;
    if (openedAt) {
        finding.at_s = openedAt;
        if (const Channel* through = survey.recording()->part(fuse.part, probe::kCurrent)) {
            finding.value = std::max(finding.value, largestMagnitude(*through, 0, *openedAt));
        }
        finding.what = say("{} of {} opens in the drive at {}.", name, amount(rating_A, finding.kind),
                           amount(*openedAt, QuantityKind::Time));
    } else {
        finding.at_s = current.at_s;
        finding.word = current.value_A > rating_A ? SignalWord::Warning : SignalWord::Caution;
        finding.what =
            say("{} of {} carries {} for long ({}); {} of its rating is {}.", name,
                amount(rating_A, finding.kind), amount(current.value_A, finding.kind), whereFrom(current),
                amount(share, QuantityKind::Share), amount(finding.limit, finding.kind));
    }
    finding.why = say("A fuse that is loaded too highly opens some day without a fault, and the pump stops.");
    finding.remedies = {remedyFor(survey, fuse, current.value_A)};
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (std::size_t i = 0; i < survey.branches().size(); ++i) {
        const Branch& fuse = survey.branches()[i];
        if (fuse.sort != BranchSort::Fuse) {
            continue;
        }
        const CarriedCurrent current = sustainedCurrent(survey, i);
        const double limit_A =
            survey.circuit().limits.continuousFuseShare * survey.features(fuse.part).fuse->rating_A;
        const auto openedAt = openedAt_s(survey, fuse.part);
        if (openedAt || current.value_A > limit_A) {
            findings.push_back(findingFor(rule, survey, fuse, current, openedAt));
        }
    }
    return findings;
}

} // namespace

extern const Rule kFuseSmallerThanLoad{
    "fuse-smaller-than-load",
    words("Fuse smaller than the load"),
    SignalWord::Warning,
    words("continuous share set in the project's limits; 80 %: common practice, no "
          "published source"),
    false,
    check};

} // namespace pumpwright
