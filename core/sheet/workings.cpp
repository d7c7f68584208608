#include "core/sheet/workings.h"

#include "core/checks/set_point.h"
#include "core/parts/part_kind.h"

#include <algorithm>

namespace pumpwright {
namespace {

bool contains(const std::vector<PartId>& ids, const PartId& id) {
    return std::ranges::find(ids, id) != ids.end();
}

void addContactsOf(std::vector<PartId>& deciders, const Survey& survey, const std::vector<LeadStep>& steps,
                   const PartId& load) {
    for (const LeadStep& step : steps) {
        if (!step.branch) {
            continue;
        }
        const Branch& branch = survey.branches()[*step.branch];
        if (branch.sort == BranchSort::Contact && branch.part != load && !contains(deciders, branch.part)) {
            deciders.push_back(branch.part);
        }
    }
}

/// All whose contacts lie in the way of the part's current, and in the ways of theirs.
std::vector<PartId> decidersAbout(const Survey& survey, const PartId& part) {
    std::vector<PartId> deciders;
    std::vector<PartId> open{part};
    for (std::size_t next = 0; next < open.size(); ++next) {
        for (const LoadPath& path : survey.loadPaths()) {
            if (path.part == open[next]) {
                addContactsOf(deciders, survey, path.back, path.part);
                addContactsOf(deciders, survey, path.feed, path.part);
            }
        }
        for (const PartId& decider : deciders) {
            if (!contains(open, decider)) {
                open.push_back(decider);
            }
        }
    }
    return deciders;
}

std::vector<PartId> sensorsAmong(const Survey& survey, const std::vector<PartId>& ids) {
    std::vector<PartId> sensors;
    std::ranges::copy_if(ids, std::back_inserter(sensors),
                         [&](const PartId& id) { return setPointOf(survey, id).has_value(); });
    return sensors;
}

bool hasMotor(const Features& features) {
    return std::ranges::find(features.loads, LoadSort::Motor, &Load::sort) != features.loads.end();
}

/// IEC 81346-2 tells parts of the vacuum side apart by what they do: A several things, R restricts the way, C
/// stores.
void addVacuumPart(Workings& workings, const PartId& id, const Part& part) {
    const PartKind& kind = kindOf(part);
    if (kind.ports(part).empty() || !kind.terminals(part).empty()) {
        return;
    }
    if (kind.letter() == "A") {
        workings.boosters.push_back(id);
    } else if (kind.letter() == "R") {
        workings.checkValves.push_back(id);
    } else if (kind.letter() == "C") {
        workings.reservoirs.push_back(id);
    }
}

void sortDeciders(Workings& workings, const Survey& survey) {
    workings.sensors = sensorsAmong(survey, workings.deciders);
    for (const PartId& id : workings.deciders) {
        const Part& part = survey.part(id);
        if (setTime_s(part)) {
            workings.timers.push_back(id);
        } else if (kindOf(part).letter() == "S") {
            workings.handles.push_back(id);
        }
    }
}

} // namespace

Workings workingsOf(const Survey& survey) {
    Workings workings;
    for (const auto& [id, part] : survey.circuit().parts) {
        if (hasMotor(survey.features(id))) {
            workings.pumps.push_back(id);
        } else if (kindOf(part).letter() == "P") {
            const std::vector<PartId> sensors = sensorsAmong(survey, decidersAbout(survey, id));
            if (!sensors.empty()) {
                workings.warnings.push_back({id, sensors});
            }
        }
        addVacuumPart(workings, id, part);
    }
    if (!workings.pumps.empty()) {
        workings.deciders = decidersAbout(survey, workings.pumps.front());
    }
    sortDeciders(workings, survey);
    return workings;
}

const LoadPath* feedOf(const Survey& survey, const PartId& part) {
    const auto found = std::ranges::find_if(survey.loadPaths(), [&](const LoadPath& path) {
        return path.part == part && path.source.has_value();
    });
    return found == survey.loadPaths().end() ? nullptr : &*found;
}

std::vector<PartId> partsOnFeed(const Survey& survey, const LoadPath& path) {
    std::vector<PartId> parts;
    for (const LeadStep& step : path.feed) {
        if (!step.branch) {
            continue;
        }
        const Branch& branch = survey.branches()[*step.branch];
        const bool tells = branch.sort == BranchSort::Fuse || branch.sort == BranchSort::Contact ||
                           branch.sort == BranchSort::Rectifier;
        if (tells && branch.part != path.source && !contains(parts, branch.part)) {
            parts.push_back(branch.part);
        }
    }
    return parts;
}

std::optional<PartId> groundOf(const Survey& survey, const LoadPath& path) {
    for (const LeadStep& step : path.back) {
        if (survey.features(step.to.part).ground) {
            return step.to.part;
        }
    }
    return std::nullopt;
}

bool isHandOperated(const Part& part) {
    const auto choices = kindOf(part).choices();
    return std::ranges::find(choices, "atStart", &ChoiceSpec::key) != choices.end();
}

std::optional<double> setTime_s(const Part& part) {
    const PartKind& kind = kindOf(part);
    const std::vector<std::string> keys = kind.features(part).setPoints;
    for (const ParameterSpec& parameter : kind.parameters()) {
        if (parameter.kind == QuantityKind::Time && std::ranges::find(keys, parameter.key) != keys.end()) {
            return kind.value(part, parameter.key);
        }
    }
    return std::nullopt;
}

} // namespace pumpwright
