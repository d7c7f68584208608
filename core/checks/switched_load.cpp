#include "core/checks/switched_load.h"

#include "core/checks/carried_current.h"
#include "core/checks/suppression.h"

namespace pumpwright {
namespace {

/// [s] L/R up to which DC-1 and DC-12 reach [IEC 60947-4-1, IEC 60947-5-1].
constexpr double kResistive_s = 1e-3;
/// A contact for inductive loads at 12 V needs this many times its current as a resistive rating
/// [FAA AC 43.13-1B, table 11-4].
constexpr double kInductiveFactor = 2;

} // namespace

UtilisationCategory categoryOf(const Load& load) {
    switch (load.sort) {
    case LoadSort::Motor:
        return {"DC-3", words("a motor")};
    case LoadSort::Lamp:
        return {"DC-6", words("a filament lamp")};
    case LoadSort::Coil:
        return {"DC-13", words("a coil")};
    case LoadSort::Electronic:
        return {"DC-12", words("electronics")};
    case LoadSort::Resistive:
        break;
    }
    return {"DC-1", words("a resistive load")};
}

bool breaksInductively(const Survey& survey, const LoadPath& path) {
    const Branch& branch = survey.branches()[path.branch];
    if (path.load.sort == LoadSort::Motor) {
        return !freewheelDiodeOf(survey, branch);
    }
    if (branch.sort != BranchSort::Coil) {
        return false;
    }
    const Coil& coil = survey.features(path.part).coils[branch.index];
    return coil.inductance_H > kResistive_s * coil.resistance_ohm && !freewheelDiodeOf(survey, branch);
}

SwitchedLoads::SwitchedLoads(const Survey& survey) {
    for (const LoadPath& path : survey.loadPaths()) {
        for (const std::vector<LeadStep>* way : {&path.feed, &path.back}) {
            for (const LeadStep& step : *way) {
                if (step.branch && survey.branches()[*step.branch].sort == BranchSort::Contact) {
                    m_over[*step.branch].push_back(&path);
                }
            }
        }
    }
}

const std::vector<const LoadPath*>& SwitchedLoads::over(std::size_t contact) const {
    static const std::vector<const LoadPath*> none;
    const auto found = m_over.find(contact);
    return found == m_over.end() ? none : found->second;
}

const LoadPath* SwitchedLoads::heaviest(std::size_t contact) const {
    const LoadPath* heaviest = nullptr;
    for (const LoadPath* path : over(contact)) {
        if (heaviest == nullptr || path->load.inrush_A > heaviest->load.inrush_A) {
            heaviest = path;
        }
    }
    return heaviest;
}

BreakingLimit breakingLimit(const Survey& survey, const SwitchedLoads& loads, std::size_t contact) {
    const ContactRating& rating = contactOf(survey, survey.branches()[contact]).rating;
    BreakingLimit limit{rating.breakResistive_A};
    for (const LoadPath* path : loads.over(contact)) {
        const bool larger =
            limit.inductive == nullptr || path->load.running_A > limit.inductive->load.running_A;
        if (larger && breaksInductively(survey, *path)) {
            limit.inductive = path;
        }
    }
    if (limit.inductive != nullptr) {
        limit.derived = rating.breakInductive_A <= 0;
        limit.value_A = limit.derived ? rating.breakResistive_A / kInductiveFactor : rating.breakInductive_A;
    }
    return limit;
}

} // namespace pumpwright
