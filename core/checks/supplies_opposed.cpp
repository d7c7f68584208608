#include "core/checks/carried_current.h"
#include "core/checks/lead_values.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/wording.h"
#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

/// A battery takes a tenth of its ampere-hours as a current for long. Common practice, no published source.
constexpr double kChargeHours_s = 36'000;
/// A diode in a battery's lead is chosen for this many times the current of all loads behind it. Common
/// practice, no published source.
constexpr double kDiodeMargin = 2;

using Way = std::vector<LeadStep>;

/// What one source drives into another.
struct Opposition {
    const Branch* driving;
    const Branch* driven;
    bool reversed; ///< plus on minus: both voltages act in the same ring
    Way there;     ///< from the driving one's plus
    Way back;      ///< to its minus
    double current_A;
    double limit_A;
};

const Source& factsOf(const Survey& survey, const Branch& source) {
    return *survey.features(source.part).source;
}

std::optional<Opposition> oppositionOf(const Survey& survey, const Branch& driving, const Branch& driven,
                                       bool reversed) {
    const Source& strong = factsOf(survey, driving);
    const Source& weak = factsOf(survey, driven);
    const double acting_V = reversed ? strong.emf_V + weak.emf_V : strong.emf_V - weak.emf_V;
    if (acting_V <= 0) {
        return std::nullopt;
    }
    const End enters = reversed ? driven.toEnd() : driven.fromEnd();
    const End leaves = reversed ? driven.fromEnd() : driven.toEnd();
    const auto there = survey.leads().way(driving.fromEnd(), enters, driving.toNet, conducts);
    const auto back = survey.leads().way(leaves, driving.toEnd(), driving.fromNet, conducts);
    if (!there || !back) {
        return std::nullopt;
    }
    const double loop_ohm = strong.resistance_ohm + weak.resistance_ohm + resistance_ohm(survey, *there) +
                            resistance_ohm(survey, *back);
    return Opposition{&driving,
                      &driven,
                      reversed,
                      *there,
                      *back,
                      acting_V / loop_ohm,
                      reversed ? 0 : weak.capacity_C / kChargeHours_s};
}

/// The last wire before the driven source, cut at that source for a diode that lets it feed and not be fed.
std::optional<Remedy> diodeRemedy(const Survey& survey, const Opposition& found) {
    const End pole = found.driven->fromEnd();
    const auto wire = std::find_if(found.there.rbegin(), found.there.rend(),
                                   [](const LeadStep& step) { return step.wire.has_value(); });
    if (found.reversed || wire == found.there.rend()) {
        return std::nullopt;
    }
    const Wire& lead = survey.circuit().wires.at(*wire->wire);
    if (lead.from != pole && lead.to != pole) {
        return std::nullopt;
    }
    const auto& expected = survey.expectedCurrents().wires;
    double most_A = 0;
    for (const auto& [id, current] : expected) {
        most_A = std::max(most_A, current.inrush_A);
    }
    Part diode = partBeside(survey.circuit(), diodeKind(), survey.part(pole.part).at);
    diode.values["ratedCurrent_A"] =
        std::max(diodeKind().value(diode, "ratedCurrent_A"), kDiodeMargin * most_A);
    const std::string name = nameOf(survey.circuit(), pole);
    return Remedy{
        say("Put a diode of {} into the lead at {}, anode to it.",
            amount(diode.values["ratedCurrent_A"], QuantityKind::Current), name),
        insertEdit(survey.circuit(), *wire->wire, pole, diode, "A", "K", say("Add a diode at {}", name))};
}

std::vector<Remedy> remedies(const Survey& survey, const Opposition& found) {
    const std::string weak = nameOf(survey.circuit(), found.driven->part);
    if (found.reversed) {
        return {{say("Exchange the wires on the poles of {}.", weak),
                 swapEdit(survey.circuit(), found.driven->part, found.driven->from, found.driven->to,
                          say("Exchange the wires of {}", weak))}};
    }
    std::vector<Remedy> all;
    if (const auto diode = diodeRemedy(survey, found)) {
        all.push_back(*diode);
    }
    all.push_back({say("Charge {} before it is joined, or join the two over a switch that separates "
                       "them at rest.",
                       weak),
                   {}});
    return all;
}

/// "as soon as S1 (1–2) closes", empty if nothing has to.
Text whatCloses(const Survey& survey, const Opposition& found) {
    std::vector<Text> contacts;
    for (const Way* way : {&found.there, &found.back}) {
        for (const LeadStep& step : *way) {
            if (!step.branch || survey.branches()[*step.branch].sort != BranchSort::Contact) {
                continue;
            }
            const Branch& branch = survey.branches()[*step.branch];
            if (!contactOf(survey, branch).closedAtRest) {
                contacts.push_back(
                    say("{} ({}–{})", nameOf(survey.circuit(), branch.part), branch.from, branch.to));
            }
        }
    }
    return asSoonAsClosed(contacts);
}

Finding findingFor(const Rule& rule, const Survey& survey, const Opposition& found) {
    Finding finding = newFinding(rule);
    finding.word = found.reversed ? SignalWord::Danger : SignalWord::Warning;
    finding.parts = {found.driving->part, found.driven->part};
    for (const Way* way : {&found.there, &found.back}) {
        for (const LeadStep& step : *way) {
            if (step.wire) {
                finding.wires.push_back(*step.wire);
            }
        }
    }
    finding.value = found.current_A;
    finding.limit = found.limit_A;
    finding.kind = QuantityKind::Current;
    finding.what =
        say("{} and {} stand {}: about {} flow from one into the other{}.",
            nameOf(survey.circuit(), found.driving->part), nameOf(survey.circuit(), found.driven->part),
            found.reversed ? say("plus on minus") : say("side by side at different voltages"),
            amount(finding.value, finding.kind), whatCloses(survey, found));
    finding.why = found.reversed
                      ? say("Two batteries short each other until a wire burns or one of them bursts.")
                      : say("The weaker battery is charged without any limit: leads and battery get hot.");
    finding.remedies = remedies(survey, found);
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<const Branch*> sources;
    for (const Branch& branch : survey.branches()) {
        if (branch.sort == BranchSort::Source) {
            sources.push_back(&branch);
        }
    }
    std::vector<Finding> findings;
    for (const Branch* one : sources) {
        for (const Branch* other : sources) {
            // Each pair once, plus on minus; side by side it is asked from the stronger one.
            for (const bool reversed : {true, false}) {
                if (one == other || (reversed && !(one->part < other->part))) {
                    continue;
                }
                const auto found = oppositionOf(survey, *one, *other, reversed);
                if (found && found->current_A > found->limit_A) {
                    findings.push_back(findingFor(rule, survey, *found));
                }
            }
        }
    }
    return findings;
}

} // namespace

extern const Rule kSuppliesOpposed{
    "supplies-opposed",
    words("Two supplies against each other"),
    SignalWord::Danger,
    words("a tenth of the ampere-hours as charging current: common practice, no published source"),
    false,
    check};

} // namespace pumpwright
