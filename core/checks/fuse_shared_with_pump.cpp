#include "core/checks/controls.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/standard_size.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace pumpwright {
namespace {

/// A lamp's inrush and a small load's tolerance want a fuse well above the running current.
constexpr double kOwnFuseShare = 2;
/// [A] the smallest fuse that a builder finds on the shelf. Common practice, no published source.
constexpr double kSmallestFuse_A = 3;

/// The last fuse before a load, as number of its branch, or nothing.
std::optional<std::size_t> lastFuse(const Survey& survey, const LoadPath& path) {
    std::optional<std::size_t> last;
    for (const LeadStep& step : path.feed) {
        if (step.branch && survey.branches()[*step.branch].sort == BranchSort::Fuse) {
            last = step.branch;
        }
    }
    return last;
}

/// Steps of a load's feed that the pump's feed does not share.
std::optional<WireId> ownLead(const LoadPath& load, const LoadPath& pump) {
    for (const LeadStep& step : load.feed) {
        const bool shared = std::any_of(pump.feed.begin(), pump.feed.end(), [&](const LeadStep& other) {
            return step.wire && other.wire == step.wire;
        });
        if (step.wire && !shared) {
            return step.wire;
        }
    }
    return std::nullopt;
}

/// Numbers of the fed load paths by the last fuse before them.
std::map<std::size_t, std::vector<std::size_t>> pathsByFuse(const Survey& survey) {
    std::map<std::size_t, std::vector<std::size_t>> byFuse;
    for (std::size_t i = 0; i < survey.loadPaths().size(); ++i) {
        if (const auto fuse = lastFuse(survey, survey.loadPaths()[i])) {
            byFuse[*fuse].push_back(i);
        }
    }
    return byFuse;
}

/// Those of them that are no part of the pump's own control.
std::vector<std::size_t> strangers(const Survey& survey, const LoadPath& pump,
                                   const std::vector<std::size_t>& onFuse) {
    const std::set<std::size_t> commanding = commandingPathsOf(survey, pump);
    std::vector<std::size_t> found;
    for (const std::size_t number : onFuse) {
        if (survey.loadPaths()[number].part != pump.part && !commanding.contains(number)) {
            found.push_back(number);
        }
    }
    return found;
}

Remedy ownFuse(const Survey& survey, const LoadPath& load, const LoadPath& pump) {
    const std::string name = nameOf(survey.circuit(), load.part);
    const auto lead = ownLead(load, pump);
    const auto rating_A = fuseAtLeast_A(std::max(kSmallestFuse_A, kOwnFuseShare * load.load.running_A));
    if (!lead || !rating_A) {
        return {say("Feed {} over a fuse of its own.", name), {}};
    }
    // The end of the lead that is nearer to the source.
    const Wire& wire = survey.circuit().wires.at(*lead);
    const auto step = std::find_if(load.feed.begin(), load.feed.end(),
                                   [&](const LeadStep& one) { return one.wire == lead; });
    const End nearEnd = step->to == wire.to ? wire.from : wire.to;
    return {say("Put a fuse of {} into {}, so that {} has its own.", amount(*rating_A, QuantityKind::Current),
                nameOf(survey.circuit(), *lead), name),
            fuseEdit(survey.circuit(), *lead, nearEnd, *rating_A, say("Add a fuse for {}", name))};
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    const auto byFuse = pathsByFuse(survey);
    for (const std::size_t number : pumpPaths(survey)) {
        const LoadPath& pump = survey.loadPaths()[number];
        const auto fuse = lastFuse(survey, pump);
        for (const std::size_t other :
             fuse ? strangers(survey, pump, byFuse.at(*fuse)) : std::vector<std::size_t>{}) {
            const LoadPath& load = survey.loadPaths()[other];
            const PartId& fusePart = survey.branches()[*fuse].part;
            Finding finding = newFinding(rule);
            finding.parts = {fusePart, pump.part, load.part};
            finding.value = 2;
            finding.limit = 1;
            finding.what = say("{} feeds {} and {} as well.", nameOf(survey.circuit(), fusePart),
                               nameOf(survey.circuit(), pump.part), nameOf(survey.circuit(), load.part));
            finding.why =
                say("A fault there opens the fuse, and with the lamp or horn the brake assist is gone.");
            finding.remedies = {ownFuse(survey, load, pump)};
            findings.push_back(std::move(finding));
        }
    }
    return findings;
}

} // namespace

extern const Rule kFuseSharedWithPump{"fuse-shared-with-pump",
                                      words("Pump shares its fuse"),
                                      SignalWord::Warning,
                                      words("common practice, no published source"),
                                      false,
                                      check};

} // namespace pumpwright
