#pragma once

#include "core/checks/survey.h"

#include <optional>
#include <vector>

namespace pumpwright {

/// Contacts that lie side by side between the same two nets. They never close or open together, so that one
/// alone makes and breaks the whole.
class ParallelContacts {
public:
    explicit ParallelContacts(const Survey& survey);

    /// Each with the numbers of two or more branches, mechanical contacts that something moves.
    const std::vector<std::vector<std::size_t>>& groups() const { return m_groups; }
    bool contains(std::size_t contact) const { return m_groupOf[contact].has_value(); }
    /// The group that a contact is in, or null.
    const std::vector<std::size_t>* groupOf(std::size_t contact) const {
        return contains(contact) ? &m_groups[*m_groupOf[contact]] : nullptr;
    }

private:
    std::vector<std::vector<std::size_t>> m_groups;
    std::vector<std::optional<std::size_t>> m_groupOf; ///< by number of the branch
};

} // namespace pumpwright
