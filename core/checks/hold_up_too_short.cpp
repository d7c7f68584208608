#include "core/checks/carried_current.h"
#include "core/checks/contact_chatter.h"
#include "core/checks/control_input.h"
#include "core/checks/controls.h"
#include "core/checks/drive_reading.h"
#include "core/checks/hold_up.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/suppression.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace pumpwright {
namespace {

// Common practice, no published source, both of them.
constexpr double kRemedyMargin = 1.25; ///< an electrolytic capacitor may have a fifth less than stated
constexpr double kMost_F = 0.1;        ///< beyond it a run-on timer is cheaper and smaller
constexpr std::array kE6{1.0, 1.5, 2.2, 3.3, 4.7, 6.8};

/// A capacitor beside a coil or input, for how long it keeps it on, and the gap in what commands it.
struct HoldUp {
    const Branch* storage;
    const LoadPath* path;
    double holds_s;
    TimeSpan gap;
};

/// The longest opening that ends within the time in which a second closing counts as a restart.
std::optional<TimeSpan> longestGap(const Channel& state) {
    std::optional<TimeSpan> longest;
    const std::vector<double> closings_s = risings(state);
    for (const double opens_s : fallings(state)) {
        const auto closes = std::upper_bound(closings_s.begin(), closings_s.end(), opens_s);
        if (closes == closings_s.end() || *closes - opens_s > kChatterWindow_s) {
            continue;
        }
        const TimeSpan gap{opens_s, *closes};
        longest = !longest || gap.length_s() > longest->length_s() ? gap : longest;
    }
    return longest;
}

/// What driver and foot do is meant; what else opens for a moment is to be bridged.
std::optional<TimeSpan> gapToBridge(const Survey& survey, const LoadPath& path) {
    std::optional<TimeSpan> longest;
    for (const std::size_t number : controlsOf(survey, path)) {
        const Operator by = contactOf(survey, survey.branches()[number]).by;
        const Channel* state = contactChannel(survey, survey.branches()[number], probe::kContact);
        const auto gap = state == nullptr || by == Operator::Hand || by == Operator::Pedal
                             ? std::nullopt
                             : longestGap(*state);
        if (gap && (!longest || gap->length_s() > longest->length_s())) {
            longest = gap;
        }
    }
    return longest;
}

/// Empty for a load that is neither coil nor input.
std::optional<double> holds_s(const Survey& survey, const LoadPath& path, double capacitance_F) {
    const Branch& branch = survey.branches()[path.branch];
    const double start_V = survey.supplyVoltage_V();
    if (branch.sort == BranchSort::Coil) {
        const Coil& coil = survey.features(path.part).coils[branch.index];
        return holdUp_s(capacitance_F, coil.resistance_ohm, start_V, coil.dropOut_A * coil.resistance_ohm);
    }
    for (const ControlInput& input : survey.features(path.part).inputs) {
        if (input.plus == path.load.from && input.minus == path.load.to) {
            return input.resistance_ohm > 0
                       ? holdUp_s(capacitance_F, input.resistance_ohm, start_V, input.off_V)
                       : constantHoldUp_s(capacitance_F, input.current_A, start_V, input.off_V);
        }
    }
    return std::nullopt;
}

std::optional<HoldUp> holdUpOf(const Survey& survey, const Branch& storage) {
    const Storage& capacitor = *survey.features(storage.part).storage;
    for (const LoadPath& path : survey.loadPaths()) {
        if (!path.source || !capacitor.polarised || !liesAcross(storage, survey.branches()[path.branch])) {
            continue;
        }
        const auto time_s = holds_s(survey, path, capacitor.capacitance_F);
        const auto gap = time_s ? gapToBridge(survey, path) : std::nullopt;
        if (gap && *time_s < gap->length_s()) {
            return HoldUp{&storage, &path, *time_s, *gap};
        }
    }
    return std::nullopt;
}

double nextE6_F(double capacitance_F) {
    const double decade = std::pow(10, std::floor(std::log10(capacitance_F)));
    const auto size =
        std::find_if(kE6.begin(), kE6.end(), [&](double step) { return step * decade >= capacitance_F; });
    return size == kE6.end() ? 10 * decade : *size * decade;
}

std::vector<Remedy> remedies(const Survey& survey, const HoldUp& found) {
    const PartId& id = found.storage->part;
    const double now_F = survey.features(id).storage->capacitance_F;
    const double wanted_F = nextE6_F(kRemedyMargin * now_F * found.gap.length_s() / found.holds_s);
    std::vector<Remedy> all;
    if (wanted_F <= kMost_F) {
        const Text text =
            say("{} to {}", nameOf(survey.circuit(), id), amount(wanted_F, QuantityKind::Capacitance));
        all.push_back({say("Change {}.", text),
                       valueEdit(survey.circuit(), id, "capacitance_F", wanted_F, say("Change {}", text))});
    }
    all.push_back({say("Let a timer with delay on release bridge the gap."), {}});
    return all;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const Branch& branch : survey.branches()) {
        const auto found = branch.sort == BranchSort::Storage ? holdUpOf(survey, branch) : std::nullopt;
        if (!found) {
            continue;
        }
        Finding finding = newFinding(rule);
        finding.parts = {branch.part, found->path->part};
        finding.value = found->holds_s;
        finding.limit = found->gap.length_s();
        finding.kind = QuantityKind::Time;
        finding.at_s = found->gap.from_s;
        finding.what = say("{} holds {} for {}; in the drive at {} its command is gone for {}.",
                           nameOf(survey.circuit(), branch.part), nameOf(survey.circuit(), found->path->part),
                           amount(finding.value, finding.kind), amount(*finding.at_s, finding.kind),
                           amount(finding.limit, finding.kind));
        finding.why =
            say("The capacitor costs a charge at every closing, and the relay chatters all the same.");
        finding.remedies = remedies(survey, *found);
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kHoldUpTooShort{
    "hold-up-too-short",
    words("Capacitor holds for too short a time"),
    SignalWord::Caution,
    words("the gap in the drive; gaps up to two seconds: common practice, no published source"),
    true,
    check};

} // namespace pumpwright
