#include "core/checks/remedy_edit.h"
#include "core/checks/survey.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

// Along the wire from the source: 7 in; 40 in where the wire is all the way in a sheath or enclosure
// [33 CFR 183.455(b)].
constexpr double kBare_m = 0.1778;
constexpr double kSheathed_m = 1.016;

struct Lead {
    std::vector<WireId> wires;
    double length_m = 0;
    bool sheathed = true;

    double limit_m() const { return sheathed ? kSheathed_m : kBare_m; }
};

/// The wires between a source and a fuse, if no other fuse lies between.
std::optional<Lead> leadTo(const Survey& survey, const SourceLeads& source, const Branch& fuse) {
    std::optional<Lead> shortest;
    for (const End& end : {fuse.fromEnd(), fuse.toEnd()}) {
        const auto way = source.fromPlusUnfused.way(end);
        if (!way) {
            continue;
        }
        Lead lead;
        for (const LeadStep& step : *way) {
            if (step.wire) {
                const Wire& wire = survey.circuit().wires.at(*step.wire);
                lead.wires.push_back(*step.wire);
                lead.length_m += wire.length_m;
                lead.sheathed = lead.sheathed && wire.sheathed;
            }
        }
        shortest = !shortest || lead.length_m < shortest->length_m ? lead : *shortest;
    }
    return shortest;
}

std::vector<Remedy> remedies(const Survey& survey, const Branch& source, const Lead& lead,
                             const std::string& name) {
    std::vector<Remedy> remedies;
    if (lead.wires.size() == 1) {
        Wire wire = survey.circuit().wires.at(lead.wires.front());
        wire.length_m = kBare_m;
        const Text text = say("Move {} to {}", name, nameOf(survey.circuit(), source.part));
        remedies.push_back({say("{}, at most 0.178 m of wire before it.", text),
                            Edit{text.english(), {putWire(lead.wires.front(), std::move(wire))}}});
    } else {
        remedies.push_back(
            {say("Move {} to the begin of {}.", name, nameOf(survey.circuit(), lead.wires.front())), {}});
    }
    if (!lead.sheathed && lead.length_m <= kSheathed_m) {
        Edit edit{say("Sheathe the lead to {}", name).english(), {}};
        for (const WireId& id : lead.wires) {
            Wire wire = survey.circuit().wires.at(id);
            wire.sheathed = true;
            edit.changes.push_back(putWire(id, std::move(wire)));
        }
        remedies.push_back(
            {say("Put {} into a sheath all the way.", listOf(namesOf(survey.circuit(), lead.wires))),
             std::move(edit)});
    }
    return remedies;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const SourceLeads& leads : survey.sources()) {
        for (const Branch& fuse : survey.branches()) {
            const auto lead = fuse.sort == BranchSort::Fuse ? leadTo(survey, leads, fuse) : std::nullopt;
            if (!lead || lead->length_m <= lead->limit_m()) {
                continue;
            }
            const Branch& source = leads.source;
            const std::string name = nameOf(survey.circuit(), fuse.part);
            Finding finding = newFinding(rule);
            finding.parts = {source.part, fuse.part};
            finding.wires = lead->wires;
            finding.value = lead->length_m;
            finding.limit = lead->limit_m();
            finding.kind = QuantityKind::Length;
            finding.what =
                say("{} of wire lie between {} and {}{}; {} are allowed.",
                    amount(lead->length_m, finding.kind), nameOf(survey.circuit(), source.part), name,
                    lead->sheathed ? say(", in a sheath") : Text(), amount(finding.limit, finding.kind));
            finding.why = say("Nothing protects this piece of wire: when it chafes through, it burns.");
            finding.remedies = remedies(survey, source, *lead, name);
            findings.push_back(std::move(finding));
        }
    }
    return findings;
}

} // namespace

extern const Rule kFuseFarFromSource{"fuse-far-from-source",
                                     words("Fuse far from the source"),
                                     SignalWord::Caution,
                                     words("33 CFR 183.455(b)"),
                                     false,
                                     check};

} // namespace pumpwright
