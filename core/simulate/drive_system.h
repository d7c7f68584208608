#pragma once

#include "core/circuit/circuit.h"
#include "core/parts/law.h"
#include "core/simulate/differential_system.h"
#include "core/simulate/recording.h"

#include <map>
#include <memory>
#include <span>
#include <string>
#include <vector>

namespace pumpwright {

/// One law of the system: whose it is and which part of the memory is its own.
struct PlacedLaw {
    std::unique_ptr<Law> law;
    Subject subject = Subject::Part;
    std::string id;
    std::string reference;
    std::size_t memoryBegin = 0;
    std::size_t memorySize = 0;
    std::size_t probeCount = 0;
};

/// A circuit as one system of equations: unknowns, laws, and what the recording keeps of them.
/// Immutable but for the memory, the laws' discrete state,
/// and for the plan where somebody adds to it while the drive goes on.
class DriveSystem final : public DifferentialSystem {
public:
    /// `toleranceShare`: of the sizes below which the laws say that errors do not matter.
    explicit DriveSystem(const Circuit& circuit, double toleranceShare = 1);
    ~DriveSystem() override;

    int size() const override { return static_cast<int>(m_start.size()); }
    void rightSide(double time_s, std::span<const double> x, std::span<double> f) const override;
    void rightSideAndSlopes(double time_s, std::span<const double> x, std::span<double> f,
                            SparseMatrix& slopes) const override;
    void masses(SparseMatrix& masses) const override;
    std::span<const double> tolerances() const override { return m_tolerances; }

    const Surroundings& surroundings() const { return m_surroundings; }
    /// What the laws see from now on.
    void followPlan(const DrivePlan& plan) { m_surroundings.followPlan(plan); }
    std::span<const double> start() const { return m_start; }
    std::span<const PlacedLaw> laws() const { return m_laws; }
    std::span<const Unknown> nodes() const { return m_nodes; }
    /// Lost in the leaks that keep every node from floating.
    double leakingPower_W(std::span<const double> x) const;

    /// What a law sees at an instant.
    Point pointFor(const PlacedLaw& law, double time_s, std::span<const double> x) const;
    std::span<double> memoryOf(const PlacedLaw& law);
    /// The next time [s] at which something is sure to happen.
    double nextDue_s(double now_s) const;

    /// The part or wire that an unknown belongs to, and what it is: "K1 coil current".
    struct Owner {
        std::string id;
        std::string name;
    };
    const Owner& ownerOf(int unknown) const { return m_owners[static_cast<std::size_t>(unknown)]; }

    /// Channels of the recording, and their values at an instant, in the same order.
    std::vector<Channel> channels() const;
    void channelValues(double time_s, std::span<const double> x, std::span<double> values) const;

private:
    class Assembly;

    template <class Sink>
    void addAll(double time_s, std::span<const double> x, Sink& sink) const;

    Surroundings m_surroundings;
    std::vector<double> m_start;
    std::vector<double> m_tolerances;
    std::vector<Owner> m_owners;
    std::vector<Unknown> m_nodes;
    std::map<End, Unknown> m_terminals;
    std::map<End, GasNode> m_ports;
    std::vector<PlacedLaw> m_laws;
    std::vector<double> m_memory;
};

} // namespace pumpwright
