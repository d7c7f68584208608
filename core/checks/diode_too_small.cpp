#include "core/checks/carried_current.h"
#include "core/checks/current_loop.h"
#include "core/checks/standard_size.h"
#include "core/checks/suppression.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <span>

namespace pumpwright {
namespace {

/// A freewheel diode blocks ten times the supply, two to three times it with care [relay contact protection
/// in an input and output card's manual].
constexpr double kReverseFactor = 3;

// Diodes as they are sold. Common practice, no published source.
constexpr std::array kReverse_V{50.0, 100.0, 200.0, 400.0, 600.0, 1000.0};
constexpr std::array kSurges_A{30.0, 60.0, 100.0, 200.0, 400.0, 600.0, 1000.0};

/// What a diode has to stand.
struct Duty {
    double carries_A = 0;
    double surge_A = 0;
    double blocks_V = 0;
    bool freewheels = false;
};

/// The largest current of the windings between the same nets: it begins with what flowed in them.
Duty freewheelDuty(const Survey& survey, const Branch& diode) {
    Duty duty;
    duty.freewheels = true;
    for (const LoadPath& path : survey.loadPaths()) {
        const Branch& winding = survey.branches()[path.branch];
        if (isWinding(survey, winding) && liesAcross(winding, diode)) {
            duty.carries_A = std::max(duty.carries_A, path.load.running_A);
            duty.surge_A = std::max(duty.surge_A, path.load.inrush_A);
        }
    }
    return duty;
}

Duty dutyOf(const Survey& survey, std::size_t number) {
    const Branch& diode = survey.branches()[number];
    Duty duty;
    if (liesAcrossWinding(survey, diode)) {
        duty = freewheelDuty(survey, diode);
    } else {
        duty.carries_A = sustainedCurrent(survey, number).value_A;
        const auto expected = survey.expectedCurrents().branches.find(number);
        duty.surge_A = expected == survey.expectedCurrents().branches.end() ? 0 : expected->second.inrush_A;
    }
    duty.blocks_V = kReverseFactor * survey.supplyVoltage_V();
    return duty;
}

/// One value of a diode against what it has to be.
struct Shortage {
    std::string_view key; ///< on the Nameplate
    double has = 0;
    double needs = 0;
    QuantityKind kind = QuantityKind::Current;
    std::string_view verb;
    std::span<const double> sizes; ///< empty: those of standard_size.h

    double ratio() const { return needs / has; }
};

std::vector<Shortage> shortages(const Rectifier& diode, const Duty& duty) {
    std::vector<Shortage> all{
        {"ratedCurrent_A", diode.continuous_A, duty.carries_A, QuantityKind::Current, words("carries"), {}},
        {"surgeCurrent_A", diode.surge_A, duty.surge_A, QuantityKind::Current, words("takes as a surge"),
         kSurges_A},
        {"reverseVoltage_V", diode.reverse_V, duty.blocks_V, QuantityKind::Voltage, words("blocks"),
         kReverse_V}};
    std::erase_if(all, [](const Shortage& one) { return one.has <= 0 || one.needs <= one.has; });
    std::stable_sort(all.begin(), all.end(),
                     [](const Shortage& a, const Shortage& b) { return a.ratio() > b.ratio(); });
    return all;
}

std::optional<double> sizeAtLeast(const Shortage& one) {
    if (one.sizes.empty()) {
        return diodeAtLeast_A(one.needs);
    }
    const auto size = std::lower_bound(one.sizes.begin(), one.sizes.end(), one.needs);
    return size == one.sizes.end() ? std::nullopt : std::optional(*size);
}

Remedy remedyFor(const Survey& survey, const PartId& id, const std::vector<Shortage>& all) {
    const std::string name = nameOf(survey.circuit(), id);
    Part larger = survey.part(id);
    std::vector<std::string> values;
    for (const Shortage& one : all) {
        const auto size = sizeAtLeast(one);
        if (!size) {
            return {say("Choose a larger diode as {}.", name), {}};
        }
        larger.values.insert_or_assign(std::string(one.key), *size);
        values.push_back(amount(*size, one.kind));
    }
    return {say("Choose a diode for {} as {}.", listOf(values), name),
            Edit{say("Choose a larger diode as {}", name).english(), {putPart(id, std::move(larger))}}};
}

Finding findingFor(const Rule& rule, const Survey& survey, const Branch& branch, const Duty& duty,
                   const std::vector<Shortage>& all) {
    Finding finding = newFinding(rule);
    finding.parts = {branch.part};
    finding.value = all.front().has;
    finding.limit = all.front().needs;
    finding.kind = all.front().kind;
    std::vector<Text> told;
    for (const Shortage& one : all) {
        told.push_back(say("{} {} of the {} that it has to", said(one.verb), amount(one.has, one.kind),
                           amount(one.needs, one.kind)));
    }
    finding.what = say("{} {} {}.", nameOf(survey.circuit(), branch.part),
                       duty.freewheels ? say("across a winding") : say("in a feed"), listOf(told));
    finding.why = duty.freewheels
                      ? say("A diode that fails closed shorts the supply as soon as the winding is fed.")
                      : say("A diode that fails opens the feed, or lets current through both ways.");
    finding.remedies = {remedyFor(survey, branch.part, all)};
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (std::size_t i = 0; i < survey.branches().size(); ++i) {
        const Branch& branch = survey.branches()[i];
        if (branch.sort != BranchSort::Rectifier || survey.features(branch.part).rectifier->zener) {
            continue;
        }
        const Duty duty = dutyOf(survey, i);
        const std::vector<Shortage> all = shortages(*survey.features(branch.part).rectifier, duty);
        if (!all.empty()) {
            findings.push_back(findingFor(rule, survey, branch, duty, all));
        }
    }
    return findings;
}

} // namespace

extern const Rule kDiodeTooSmall{
    "diode-too-small",
    words("Diode too small for its current or voltage"),
    SignalWord::Caution,
    words("the diode's ratings; blocks three times the supply: relay contact protection in a card's manual"),
    false,
    check};

} // namespace pumpwright
