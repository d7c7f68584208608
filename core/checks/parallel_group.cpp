#include "core/checks/parallel_group.h"

#include "core/checks/carried_current.h"
#include "core/checks/net_spread.h"

#include <algorithm>
#include <map>
#include <utility>

namespace pumpwright {

ParallelContacts::ParallelContacts(const Survey& survey) : m_groupOf(survey.branches().size()) {
    std::map<std::pair<std::size_t, std::size_t>, std::vector<std::size_t>> byNets;
    for (std::size_t i = 0; i < survey.branches().size(); ++i) {
        const Branch& branch = survey.branches()[i];
        if (isOperated(branch) && !contactOf(survey, branch).semiconductor &&
            branch.fromNet != branch.toNet) {
            byNets[std::minmax(branch.fromNet, branch.toNet)].push_back(i);
        }
    }
    for (auto& [nets, contacts] : byNets) {
        if (contacts.size() > 1) {
            for (const std::size_t contact : contacts) {
                m_groupOf[contact] = m_groups.size();
            }
            m_groups.push_back(std::move(contacts));
        }
    }
}

} // namespace pumpwright
