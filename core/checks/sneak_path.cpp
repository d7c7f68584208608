#include "core/checks/carried_current.h"
#include "core/checks/controls.h"
#include "core/checks/edit_draft.h"
#include "core/checks/net_spread.h"
#include "core/checks/remedy_parts.h"
#include "core/checks/sneak_search.h"
#include "core/checks/wording.h"
#include "core/parts/kinds.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

/// [A] that a small diode of its own carries in a wire.
constexpr double kSmallDiode_A = 1;

Text pathText(const Survey& survey, const SneakVictim& victim) {
    Text path = say("plus");
    const LoadPath* fed = nullptr;
    for (const LoadPath& load : survey.loadPaths()) {
        fed = fed == nullptr && load.source ? &load : fed;
    }
    if (fed != nullptr) {
        path = say("{} plus", nameOf(survey.circuit(), *fed->source));
    }
    for (const std::size_t number : victim.path) {
        path = say("{} – {}", path, nameOf(survey.circuit(), survey.branches()[number].part));
    }
    return say("{} – minus", path);
}

/// Contacts that should command the load and are open, by name.
std::vector<std::string> openCommands(const Survey& survey, const SneakVictim& victim) {
    std::vector<std::string> open;
    for (const LoadPath& path : survey.loadPaths()) {
        if (path.branch != victim.branch || !path.source) {
            continue;
        }
        for (const std::size_t contact : controlsOf(survey, path)) {
            const PartId& part = survey.branches()[contact].part;
            const std::string name = nameOf(survey.circuit(), part);
            const bool closed =
                std::find(victim.operated.begin(), victim.operated.end(), part) != victim.operated.end();
            if (!closed && std::find(open.begin(), open.end(), name) == open.end()) {
                open.push_back(name);
            }
        }
    }
    return open;
}

Text stateText(const Survey& survey, const SneakIsland& island, const SneakVictim& victim) {
    std::vector<Text> clauses;
    if (!victim.operated.empty()) {
        clauses.push_back(say("{} closed", listOf(namesOf(survey.circuit(), victim.operated))));
    }
    if (const auto open = openCommands(survey, victim); !open.empty()) {
        clauses.push_back(say("{} open", listOf(open)));
    }
    if (!victim.blown.empty()) {
        clauses.push_back(say("{} blown", listOf(namesOf(survey.circuit(), victim.blown))));
    }
    if (island.lostGround) {
        clauses.push_back(say("{} off the body", nameOf(survey.circuit(), *island.lostGround)));
    }
    return clauses.empty() ? say("in every state") : say("with {}", listOf(clauses));
}

/// The wires of the path, each with the end that the current comes to.
std::vector<LeadStep> wiresOf(const Survey& survey, const SneakVictim& victim) {
    const std::set<std::size_t> on(victim.path.begin(), victim.path.end());
    const LeadGraph& leads = survey.leads();
    const auto mayPass = [&](const Branch& branch) { return on.contains(survey.numberOf(branch)); };
    for (const auto& [id, features] : survey.allFeatures()) {
        const Branch& branch = survey.branches()[victim.branch];
        for (const End& end : {branch.fromEnd(), branch.toEnd()}) {
            if (features.source) {
                const End& other = end == branch.fromEnd() ? branch.toEnd() : branch.fromEnd();
                const auto way =
                    leads.way({id, features.source->plus}, end, survey.nets().netOf.at(other), mayPass);
                if (way) {
                    return *way;
                }
            }
        }
    }
    return {};
}

bool usedLikeThat(const Survey& survey, const LeadStep& step) {
    return std::any_of(survey.loadPaths().begin(), survey.loadPaths().end(), [&](const LoadPath& path) {
        const auto same = [&](const LeadStep& other) {
            return other.wire == step.wire && other.to == step.to;
        };
        return std::any_of(path.feed.begin(), path.feed.end(), same) ||
               std::any_of(path.back.begin(), path.back.end(), same);
    });
}

double runningThrough_A(const Survey& survey, const WireId& wire) {
    const auto found = survey.expectedCurrents().wires.find(wire);
    return found == survey.expectedCurrents().wires.end() ? 0 : found->second.running_A;
}

/// A diode in a wire that nothing needs in the direction of the unintended current.
std::optional<Remedy> diode(const Survey& survey, const SneakVictim& victim) {
    for (const LeadStep& step : wiresOf(survey, victim)) {
        if (!step.wire || usedLikeThat(survey, step) ||
            runningThrough_A(survey, *step.wire) > kSmallDiode_A) {
            continue;
        }
        const Wire& wire = survey.circuit().wires.at(*step.wire);
        const std::string name = nameOf(survey.circuit(), *step.wire);
        return Remedy{say("Put a diode into {}, against the current that should not flow.", name),
                      diodeInWireEdit(survey.circuit(), *step.wire, step.to == wire.to ? wire.from : wire.to,
                                      say("Put a diode into {}", name))};
    }
    return std::nullopt;
}

/// A bolt of its own for one of the loads that hang on the lost one.
std::optional<Remedy> ownGround(const Survey& survey, const PartId& ground, const SneakVictim& victim) {
    for (const std::size_t number : victim.path) {
        const Branch& branch = survey.branches()[number];
        for (const auto& [id, wire] : survey.circuit().wires) {
            const bool fromBolt = wire.from.part == ground;
            const End& end = fromBolt ? wire.to : wire.from;
            if ((!fromBolt && wire.to.part != ground) || (end != branch.fromEnd() && end != branch.toEnd())) {
                continue;
            }
            const std::string name = nameOf(survey.circuit(), branch.part);
            EditDraft draft(survey.circuit(), say("Give {} a ground of its own", name));
            Wire moved = wire;
            (fromBolt ? moved.from : moved.to) = {draft.add(groundKind(), branch.part),
                                                  wire.to.part == ground ? wire.to.terminal
                                                                         : wire.from.terminal};
            moved.bends.clear();
            moved.labelFrom.reset();
            draft.put(id, std::move(moved));
            return Remedy{say("Give {} a ground point of its own.", name), std::move(draft).edit()};
        }
    }
    return std::nullopt;
}

std::vector<Remedy> remedies(const Survey& survey, const SneakIsland& island, const SneakVictim& victim) {
    std::vector<Remedy> remedies;
    auto first = island.lostGround ? ownGround(survey, *island.lostGround, victim) : diode(survey, victim);
    if (first) {
        remedies.push_back(std::move(*first));
    }
    remedies.push_back(
        {say("Separate the two circuits: a contact of its own, or a relay, for each of them."), {}});
    return remedies;
}

Finding findingFor(const Rule& rule, const Survey& survey, const SneakIsland& island,
                   const SneakVictim& victim) {
    const std::string name = nameOf(survey.circuit(), survey.branches()[victim.branch].part);
    Finding finding = newFinding(rule);
    const bool faulty = island.lostGround || !victim.blown.empty();
    finding.word = faulty ? SignalWord::Caution : SignalWord::Warning;
    finding.parts = {survey.branches()[victim.branch].part};
    const auto add = [&](const PartId& part) {
        if (std::find(finding.parts.begin(), finding.parts.end(), part) == finding.parts.end()) {
            finding.parts.push_back(part);
        }
    };
    for (const std::size_t number : victim.path) {
        add(survey.branches()[number].part);
    }
    std::for_each(victim.blown.begin(), victim.blown.end(), add);
    if (island.lostGround) {
        add(*island.lostGround);
    }
    finding.value = victim.voltage_V;
    finding.limit = victim.limit_V;
    finding.kind = QuantityKind::Voltage;
    finding.what = say("{} gets {} {} by a path that does not command it: {}.", name,
                       amount(victim.voltage_V, finding.kind), stateText(survey, island, victim),
                       pathText(survey, victim));
    finding.why = faulty ? say("A fault then does more than put something out: it turns something else on, "
                               "or keeps it on.")
                         : say("Something comes on, or stays on, that nobody has turned on.");
    finding.remedies = remedies(survey, island, victim);
    return finding;
}

/// Says that not every combination was tried.
Finding sampled(const Rule& rule, const Survey& survey, const SneakIsland& island,
                const SneakSearch& search) {
    Finding finding = newFinding(rule);
    finding.word = SignalWord::Notice;
    for (const std::size_t number : island.branches) {
        const Branch& branch = survey.branches()[number];
        const bool varies = branch.sort == BranchSort::Fuse || isOperated(branch);
        if (varies &&
            std::find(finding.parts.begin(), finding.parts.end(), branch.part) == finding.parts.end()) {
            finding.parts.push_back(branch.part);
        }
    }
    finding.value = search.combinations;
    finding.limit = static_cast<double>(kMostCombinations);
    finding.what = say("{} switches, relays and fuses that hang together have {} combinations; a sample of "
                       "{} of them was looked at for unintended paths.",
                       finding.parts.size(), fmt::format("{:.3g}", search.combinations), search.tried);
    finding.why = say("A path that only some other combination opens is not found.");
    finding.remedies = {
        {say("Check parts of the circuit as circuits of their own, or look through it by hand."), {}}};
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    std::set<std::size_t> told;
    for (const SneakIsland& island : sneakIslands(survey)) {
        const SneakSearch search = searchSneaks(survey, island);
        for (const SneakVictim& victim : search.victims) {
            if (told.insert(victim.branch).second) {
                findings.push_back(findingFor(rule, survey, island, victim));
            }
        }
        if (static_cast<double>(search.tried) < search.combinations) {
            findings.push_back(sampled(rule, survey, island, search));
        }
    }
    return findings;
}

} // namespace

extern const Rule kSneakPath{"sneak-path",
                             words("Fed by a path that does not command it"),
                             SignalWord::Warning,
                             words("sneak analysis as ECSS-Q-TM-40-04 describes it, from memory"),
                             false,
                             check};

} // namespace pumpwright
