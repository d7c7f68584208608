#include "core/checks/carried_current.h"
#include "core/checks/net_spread.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

/// [A] below which no arc lasts between silver contacts, value from memory of contact textbooks; a few tenths
/// of an ampere for clean metals [Bell System paper on arcing of contacts, 1953].
constexpr double kArc_A = 0.4;

/// A changeover contact whose two throws are the two poles of the supply.
struct Bridge {
    std::size_t plusContact; ///< numbers of the branches of its two halves
    std::size_t minusContact;
    double current_A;
};

bool isHalf(const Survey& survey, std::size_t number) {
    const Branch& branch = survey.branches()[number];
    return isOperated(branch) && !contactOf(survey, branch).semiconductor;
}

/// Whether two contacts are the halves of one changeover: one tongue, one closed and one open at rest.
bool makeOneChangeover(const Survey& survey, std::size_t one, std::size_t other) {
    const Branch& a = survey.branches()[one];
    const Branch& b = survey.branches()[other];
    return a.part == b.part && a.from == b.from &&
           contactOf(survey, a).closedAtRest != contactOf(survey, b).closedAtRest;
}

/// Nets that plus and minus reach over everything that may close but this part.
struct Poles {
    std::vector<bool> plus;
    std::vector<bool> minus;

    Poles(const Survey& survey, const PartId& without) {
        const auto mayPass = [&](const Branch& branch) { return conducts(branch) && branch.part != without; };
        plus = netsOnPlus(survey, mayPass);
        minus = netsOnMinus(survey, mayPass);
    }
};

std::optional<Bridge> bridgeOf(const Survey& survey, std::size_t one, std::size_t other) {
    const Poles poles(survey, survey.branches()[one].part);
    const double current_A =
        std::max(breakingCurrent(survey, one).value_A, breakingCurrent(survey, other).value_A);
    for (const auto& [high, low] : {std::pair{one, other}, std::pair{other, one}}) {
        const std::size_t highNet = survey.branches()[high].toNet;
        const std::size_t lowNet = survey.branches()[low].toNet;
        if (poles.plus[highNet] && poles.minus[lowNet] && !poles.minus[highNet]) {
            return Bridge{high, low, current_A};
        }
    }
    return std::nullopt;
}

/// Takes the wires off a terminal.
Edit openEdit(const Circuit& circuit, const End& end, Text name) {
    Edit edit{name.english(), {}};
    for (const auto& [id, wire] : circuit.wires) {
        if (wire.from == end || wire.to == end) {
            edit.changes.push_back(takeWire(id));
        }
    }
    return edit;
}

Finding findingFor(const Rule& rule, const Survey& survey, const Bridge& bridge) {
    const Branch& high = survey.branches()[bridge.plusContact];
    const Branch& low = survey.branches()[bridge.minusContact];
    const std::string name = nameOf(survey.circuit(), high.part);
    Finding finding = newFinding(rule);
    finding.parts = {high.part};
    finding.value = bridge.current_A;
    finding.limit = kArc_A;
    finding.kind = QuantityKind::Current;
    finding.what = say("{} of {} is plus and {} is minus: as {} leaves one under {}, the arc can reach "
                       "the other, and plus lies on minus over it.",
                       high.to, name, low.to, high.from, amount(finding.value, finding.kind));
    finding.why =
        say("The arc then draws the battery's current until the fuse opens or the relay has burnt out.");
    finding.remedies = {{say("Switch plus and minus with two relays, so that one opens before the other "
                             "closes, instead of {}.",
                             name),
                         {}}};
    const Edit open = openEdit(survey.circuit(), low.toEnd(), say("Leave {} of {} open", low.to, name));
    if (!open.changes.empty()) {
        finding.remedies.insert(finding.remedies.begin(),
                                {say("Take the wire off {}: what hangs on {} then runs out by itself.",
                                     nameOf(survey.circuit(), low.toEnd()), high.from),
                                 open});
    }
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (std::size_t one = 0; one < survey.branches().size(); ++one) {
        // The branches of a part stand one after the other.
        for (std::size_t other = one + 1; isHalf(survey, one) && other < survey.branches().size() &&
                                          survey.branches()[other].part == survey.branches()[one].part;
             ++other) {
            const auto bridge = isHalf(survey, other) && makeOneChangeover(survey, one, other)
                                    ? bridgeOf(survey, one, other)
                                    : std::nullopt;
            if (bridge && bridge->current_A > kArc_A) {
                findings.push_back(findingFor(rule, survey, *bridge));
            }
        }
    }
    return findings;
}

} // namespace

extern const Rule kChangeoverArc{"changeover-arc",
                                 words("Arc can bridge a changeover contact"),
                                 SignalWord::Warning,
                                 words("least current of an arc: Bell System paper on arcing of contacts, "
                                       "1953; 0.4 A for silver from memory"),
                                 false,
                                 check};

} // namespace pumpwright
