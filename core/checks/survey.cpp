#include "core/checks/survey.h"

#include "core/checks/controls.h"
#include "core/checks/lead_values.h"
#include "core/checks/net_spread.h"
#include "core/checks/protected_wires.h"
#include "core/parts/part_kind.h"

#include <algorithm>

namespace pumpwright {
namespace {

FeaturesOf featuresOf(const Circuit& circuit) {
    FeaturesOf features;
    for (const auto& [id, part] : circuit.parts) {
        features.emplace_hint(features.end(), id, kindOf(part).features(part));
    }
    return features;
}

std::vector<std::vector<std::size_t>> branchesByNet(const std::vector<Branch>& branches,
                                                    std::size_t netCount) {
    std::vector<std::vector<std::size_t>> byNet(netCount);
    for (std::size_t i = 0; i < branches.size(); ++i) {
        byNet[branches[i].fromNet].push_back(i);
        if (branches[i].toNet != branches[i].fromNet) {
            byNet[branches[i].toNet].push_back(i);
        }
    }
    return byNet;
}

} // namespace

Survey::Survey(const CheckInputs& inputs)
    : m_inputs(inputs), m_features(featuresOf(inputs.circuit)),
      m_branches(branchesOf(inputs.nets, m_features)),
      m_branchesAt(branchesByNet(m_branches, inputs.nets.nets.size())),
      m_leads(inputs.circuit, inputs.nets, m_features, m_branches) {
    m_featuresById.reserve(m_features.size());
    for (const auto& [id, one] : m_features) {
        m_featuresById.emplace(id.text, &one);
    }
    m_sources = sourceLeadsOf(m_leads);
    for (const SourceLeads& leads : m_sources) {
        m_groundLeads_ohm[leads.source.part] = pumpwright::groundLead_ohm(*this, leads);
    }
    m_sourceReaches = pumpwright::sourceReaches(*this);
    m_loadPaths = loadPathsOf(m_sources, m_features, m_branches, supplyVoltage_V());
    m_expected = expectedCurrentsOf(m_loadPaths);
    for (std::size_t i = 0; i < m_loadPaths.size(); ++i) {
        m_pathsOf[m_loadPaths[i].part].push_back(i);
    }
    const auto neverSwitched = [](const Branch& branch) { return conducts(branch) && !isOperated(branch); };
    m_liveNets = netsOnPlus(*this, neverSwitched);
    m_groundedNets = netsOnMinus(*this, neverSwitched);
    for (const std::size_t number : pumpPaths(*this)) {
        m_pumpCommands[m_loadPaths[number].branch] = pumpwright::commandOf(*this, m_loadPaths[number]);
    }
    for (std::size_t i = 0; i < m_branches.size(); ++i) {
        if (m_branches[i].sort == BranchSort::Fuse) {
            m_wiresBehind[i] = protectedWires(*this, m_branches[i]);
        }
    }
}

const std::vector<std::size_t>& Survey::pathsOf(const PartId& id) const {
    static const std::vector<std::size_t> none;
    const auto found = m_pathsOf.find(id);
    return found == m_pathsOf.end() ? none : found->second;
}

std::pair<std::size_t, std::size_t> netsOf(const Survey& survey, const LoadPath& path) {
    const Branch& branch = survey.branches()[path.branch];
    return path.load.from == branch.from ? std::pair{branch.fromNet, branch.toNet}
                                         : std::pair{branch.toNet, branch.fromNet};
}

double Survey::supplyVoltage_V() const {
    double strongest = 0;
    for (const SourceLeads& leads : m_sources) {
        strongest = std::max(strongest, features(leads.source.part).source->emf_V);
    }
    constexpr double kUsual_V = 12;
    return strongest > 0 ? strongest : kUsual_V;
}

} // namespace pumpwright
