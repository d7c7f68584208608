#include "core/checks/survey.h"

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
    m_loadPaths = loadPathsOf(m_leads, m_features, m_branches, supplyVoltage_V());
    m_expected = expectedCurrentsOf(m_loadPaths);
}

double Survey::supplyVoltage_V() const {
    double strongest = 0;
    for (const auto& [id, features] : m_features) {
        if (features.source) {
            strongest = std::max(strongest, features.source->emf_V);
        }
    }
    constexpr double kUsual_V = 12;
    return strongest > 0 ? strongest : kUsual_V;
}

} // namespace pumpwright
