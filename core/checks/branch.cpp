#include "core/checks/branch.h"

#include <algorithm>
#include <tuple>

namespace pumpwright {
namespace {

/// Collects the branches of one part; a pair of terminals that is taken already gives no second branch.
class BranchList {
public:
    BranchList(const Nets& nets, const PartId& part, std::vector<Branch>& branches)
        : m_nets(nets), m_part(part), m_branches(branches), m_first(branches.size()) {}

    void add(const std::string& from, const std::string& to, BranchSort sort, std::size_t index = 0,
             bool oneWay = false, Operator by = Operator::None) {
        const auto fromNet = m_nets.netOf.find({m_part, from});
        const auto toNet = m_nets.netOf.find({m_part, to});
        if (fromNet == m_nets.netOf.end() || toNet == m_nets.netOf.end() || holds(from, to)) {
            return;
        }
        m_branches.push_back({m_part, from, to, fromNet->second, toNet->second, sort, index, oneWay, by});
    }

private:
    bool holds(const std::string& from, const std::string& to) const {
        return std::any_of(m_branches.begin() + static_cast<std::ptrdiff_t>(m_first), m_branches.end(),
                           [&](const Branch& branch) {
                               return (branch.from == from && branch.to == to) ||
                                      (branch.from == to && branch.to == from);
                           });
    }

    const Nets& m_nets;
    const PartId& m_part;
    std::vector<Branch>& m_branches;
    std::size_t m_first;
};

/// Whether current can flow from `from` to `to` only.
bool isOneWay(const Features& features, const std::string& from, const std::string& to) {
    bool forward = false;
    for (const CurrentPath& path : features.paths) {
        const bool backward = path.from == to && path.to == from;
        if (backward || (path.from == from && path.to == to && !path.oneWay)) {
            return false;
        }
        forward = forward || (path.from == from && path.to == to);
    }
    return forward;
}

void addBranches(const Features& features, BranchList& list) {
    if (features.source) {
        list.add(features.source->plus, features.source->minus, BranchSort::Source);
    }
    if (features.fuse) {
        list.add(features.fuse->from, features.fuse->to, BranchSort::Fuse);
    }
    for (std::size_t i = 0; i < features.contacts.size(); ++i) {
        const Contact& contact = features.contacts[i];
        list.add(contact.from, contact.to, BranchSort::Contact, i, contact.semiconductor, contact.by);
    }
    if (features.rectifier) {
        const auto& [anode, cathode] = std::tie(features.rectifier->anode, features.rectifier->cathode);
        list.add(anode, cathode, BranchSort::Rectifier, 0, isOneWay(features, anode, cathode));
    }
    if (features.storage) {
        list.add(features.storage->plus, features.storage->minus, BranchSort::Storage);
    }
    for (std::size_t i = 0; i < features.coils.size(); ++i) {
        list.add(features.coils[i].plus, features.coils[i].minus, BranchSort::Coil, i);
    }
    for (std::size_t i = 0; i < features.loads.size(); ++i) {
        const Load& load = features.loads[i];
        list.add(load.from, load.to, BranchSort::Load, i, isOneWay(features, load.from, load.to));
    }
    for (const CurrentPath& path : features.paths) {
        list.add(path.from, path.to, path.joins ? BranchSort::Plug : BranchSort::Passive, 0, path.oneWay);
    }
}

} // namespace

bool conducts(const Branch& branch) {
    return branch.sort == BranchSort::Fuse || branch.sort == BranchSort::Plug ||
           branch.sort == BranchSort::Contact || branch.sort == BranchSort::Rectifier;
}

bool conductsUnfused(const Branch& branch) {
    return conducts(branch) && branch.sort != BranchSort::Fuse;
}

std::vector<Branch> branchesOf(const Nets& nets, const FeaturesOf& features) {
    std::vector<Branch> branches;
    for (const auto& [id, one] : features) {
        BranchList list(nets, id, branches);
        addBranches(one, list);
    }
    return branches;
}

} // namespace pumpwright
