#pragma once

#include "core/simulate/drive_system.h"

namespace pumpwright {

/// Builds the unknowns and laws of a circuit.
class DriveSystem::Assembly final : public LawContext {
public:
    Assembly(DriveSystem& system, const Circuit& circuit);

    void build();

    Unknown node(std::string_view terminal) override;
    GasNode gas(std::string_view port) override;
    GasNode addGas(std::string_view name, double volume_m3, bool evacuated) override;
    void setPortVolume(std::string_view port, double volume_m3, bool evacuated) override;
    void joinPorts(std::string_view port, std::string_view other) override;
    Unknown addUnknown(const UnknownSpec& spec) override;
    const PartId& partId() const override { return m_part; }
    const Surroundings& surroundings() const override { return m_system.m_surroundings; }

private:
    void addNodes();
    void addPartLaws();
    void addConnections();
    void place(std::unique_ptr<Law> law, Subject subject, const std::string& id,
               const std::string& reference);
    Unknown nodeAt(const End& end) const;
    GasNode portAt(const End& end) const;

    DriveSystem& m_system;
    const Circuit& m_circuit;
    PartId m_part;    ///< that is being built; empty for wires and hoses
    std::string m_id; ///< of the part, wire or hose that is being built
    std::string m_reference;
};

} // namespace pumpwright
