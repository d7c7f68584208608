#pragma once

#include "core/checks/branch.h"
#include "core/checks/command.h"
#include "core/checks/current_loop.h"
#include "core/checks/lead_graph.h"
#include "core/checks/load_path.h"
#include "core/checks/rule.h"

#include <map>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

namespace pumpwright {

/// What all rules ask about a circuit, found once: the trade's view of every part, the ways of current
/// through them, and how every load is fed. Refers to the inputs, which must outlive it.
class Survey {
public:
    explicit Survey(const CheckInputs& inputs);
    Survey(const Survey&) = delete;
    Survey& operator=(const Survey&) = delete;

    const Circuit& circuit() const { return m_inputs.circuit; }
    const Nets& nets() const { return m_inputs.nets; }
    /// What came of the drive, or null.
    const DriveResult* drive() const { return m_inputs.drive; }
    /// The recorded drive, or null.
    const Recording* recording() const {
        return m_inputs.drive == nullptr ? nullptr : &m_inputs.drive->recording;
    }

    const Part& part(const PartId& id) const { return m_inputs.circuit.parts.at(id); }
    const Features& features(const PartId& id) const { return *m_featuresById.at(id.text); }
    const FeaturesOf& allFeatures() const { return m_features; }
    const std::vector<Branch>& branches() const { return m_branches; }
    /// The number of one of them.
    std::size_t numberOf(const Branch& branch) const {
        return static_cast<std::size_t>(&branch - m_branches.data());
    }
    /// Numbers of the branches that touch a net.
    const std::vector<std::size_t>& branchesAt(std::size_t net) const { return m_branchesAt[net]; }
    const LeadGraph& leads() const { return m_leads; }
    /// The ways from and to each source.
    const std::vector<SourceLeads>& sources() const { return m_sources; }
    /// [Ω] of the lead from a source's minus to the body, and the bolt there.
    double groundLead_ohm(const PartId& source) const { return m_groundLeads_ohm.at(source); }
    /// Which nets lie on ways from and to each source, over conductors and contacts.
    const std::vector<SourceReach>& sourceReaches() const { return m_sourceReaches; }
    const std::vector<LoadPath>& loadPaths() const { return m_loadPaths; }
    /// Numbers of the load paths of a part.
    const std::vector<std::size_t>& pathsOf(const PartId& id) const;
    /// Nets that a supply feeds with nothing to switch between, and nets that lie on its minus like that.
    const std::vector<bool>& liveNets() const { return m_liveNets; }
    const std::vector<bool>& groundedNets() const { return m_groundedNets; }
    /// What the nameplates of the fed loads add up to, for each wire and branch.
    const ExpectedCurrents& expectedCurrents() const { return m_expected; }
    /// What switches each pump, by number of its motor's branch.
    const std::map<std::size_t, Command>& pumpCommands() const { return m_pumpCommands; }
    /// Wires that a fuse, one of the branches, protects: those behind it that nothing else feeds.
    const std::vector<WireId>& wiresBehind(const Branch& fuse) const {
        return m_wiresBehind.at(numberOf(fuse));
    }
    /// Open-circuit voltage [V] of the strongest source, 12 V where there is none.
    double supplyVoltage_V() const;

private:
    CheckInputs m_inputs;
    FeaturesOf m_features;
    std::unordered_map<std::string_view, const Features*> m_featuresById;
    std::vector<Branch> m_branches;
    std::vector<std::vector<std::size_t>> m_branchesAt;
    LeadGraph m_leads;
    std::vector<SourceLeads> m_sources;
    std::map<PartId, double> m_groundLeads_ohm;
    std::vector<SourceReach> m_sourceReaches;
    std::vector<LoadPath> m_loadPaths;
    std::map<PartId, std::vector<std::size_t>> m_pathsOf;
    std::vector<bool> m_liveNets;
    std::vector<bool> m_groundedNets;
    ExpectedCurrents m_expected;
    std::map<std::size_t, Command> m_pumpCommands;
    std::map<std::size_t, std::vector<WireId>> m_wiresBehind;
};

/// The nets of a load on its plus side and on its minus side.
std::pair<std::size_t, std::size_t> netsOf(const Survey& survey, const LoadPath& path);

} // namespace pumpwright
