#pragma once

#include "core/checks/survey.h"

#include <map>
#include <string_view>
#include <vector>

namespace pumpwright {

/// What a load is to the contact that switches it: utilisation categories of IEC 60947-4-1 (DC-1, DC-3, DC-6)
/// and IEC 60947-5-1 (DC-12, DC-13).
struct UtilisationCategory {
    std::string_view name; ///< "DC-3"
    std::string_view load; ///< "a motor"
};

UtilisationCategory categoryOf(const Load& load);

/// Whether a contact has to break a winding's current: one with an L/R above 1 ms, to which DC-1 and DC-12
/// reach, or a motor; unless a diode across it takes the current over.
bool breaksInductively(const Survey& survey, const LoadPath& path);

/// Which loads each contact switches.
class SwitchedLoads {
public:
    explicit SwitchedLoads(const Survey& survey);

    /// The load paths that lead over a contact, by number of its branch.
    const std::vector<const LoadPath*>& over(std::size_t contact) const;
    /// The load with the largest inrush, or null.
    const LoadPath* heaviest(std::size_t contact) const;

private:
    std::map<std::size_t, std::vector<const LoadPath*>> m_over;
};

/// What a contact may break of the loads behind it.
struct BreakingLimit {
    double value_A = 0;
    const LoadPath* inductive = nullptr; ///< the largest of the loads that ask for the inductive rating
    bool derived = false;                ///< no inductive rating is stated: from the resistive one
};

BreakingLimit breakingLimit(const Survey& survey, const SwitchedLoads& loads, std::size_t contact);

} // namespace pumpwright
