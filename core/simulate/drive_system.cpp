#include "core/simulate/drive_system.h"

#include "core/simulate/assembly.h"

#include <algorithm>

namespace pumpwright {
namespace {

/// Keeps a node that nothing feeds from having no equation at all [S]; 10 pA at 10 V.
constexpr double kNodeLeak_S = 1e-12;
constexpr double kVoltageResolution_V = 0.01;
constexpr double kVacuumResolution_Pa = 20;

class RightSide final : public Equations {
public:
    explicit RightSide(std::span<double> f) : Equations(f.data(), false) {}

private:
    void takeSlope(Unknown, Unknown, double) override {}
};

class RightSideAndSlopes final : public Equations {
public:
    RightSideAndSlopes(std::span<double> f, SparseMatrix& slopes)
        : Equations(f.data(), true), m_slopes(slopes) {}

private:
    void takeSlope(Unknown row, Unknown column, double slope) override { m_slopes.add(row, column, slope); }

    SparseMatrix& m_slopes;
};

class Masses final : public MassMatrix {
public:
    explicit Masses(SparseMatrix& masses) : m_masses(masses) {}
    void add(Unknown row, Unknown column, double value) override {
        if (row != kReference && column != kReference) {
            m_masses.add(row, column, value);
        }
    }

private:
    SparseMatrix& m_masses;
};

Channel voltageChannel(const End& end) {
    return {{Subject::Terminal, end.part.text, end.terminal},
            {end.terminal, "voltage at " + end.terminal, QuantityKind::Voltage, false, kVoltageResolution_V},
            {},
            {}};
}

Channel vacuumChannel(const End& end) {
    return {
        {Subject::Port, end.part.text, end.terminal},
        {probe::kVacuum, "vacuum at " + end.terminal, QuantityKind::GaugeVacuum, false, kVacuumResolution_Pa},
        {},
        {}};
}

} // namespace

DriveSystem::DriveSystem(const Circuit& circuit, double toleranceShare) : m_surroundings(circuit.plan) {
    Assembly(*this, circuit).build();
    for (double& tolerance : m_tolerances) {
        tolerance *= toleranceShare;
    }
}

DriveSystem::~DriveSystem() = default;

Point DriveSystem::pointFor(const PlacedLaw& law, double time_s, std::span<const double> x) const {
    return {time_s, x, std::span(m_memory).subspan(law.memoryBegin, law.memorySize), m_surroundings};
}

std::span<double> DriveSystem::memoryOf(const PlacedLaw& law) {
    return std::span(m_memory).subspan(law.memoryBegin, law.memorySize);
}

template <class Sink>
void DriveSystem::addAll(double time_s, std::span<const double> x, Sink& sink) const {
    const Point everything{time_s, x, {}, m_surroundings};
    for (const Unknown node : m_nodes) {
        sink.add(node, -kNodeLeak_S * everything[node]);
        sink.addSlope(node, node, -kNodeLeak_S);
    }
    for (const PlacedLaw& placed : m_laws) {
        placed.law->addEquations(pointFor(placed, time_s, x), sink);
    }
}

void DriveSystem::rightSide(double time_s, std::span<const double> x, std::span<double> f) const {
    std::fill(f.begin(), f.end(), 0.0);
    RightSide sink(f);
    addAll(time_s, x, sink);
}

void DriveSystem::rightSideAndSlopes(double time_s, std::span<const double> x, std::span<double> f,
                                     SparseMatrix& slopes) const {
    std::fill(f.begin(), f.end(), 0.0);
    RightSideAndSlopes sink(f, slopes);
    addAll(time_s, x, sink);
}

void DriveSystem::masses(SparseMatrix& masses) const {
    Masses sink(masses);
    for (const PlacedLaw& placed : m_laws) {
        placed.law->addMasses(sink);
    }
}

double DriveSystem::leakingPower_W(std::span<const double> x) const {
    double sum_W = 0;
    for (const Unknown node : m_nodes) {
        const double voltage_V = x[static_cast<std::size_t>(node)];
        sum_W += kNodeLeak_S * voltage_V * voltage_V;
    }
    return sum_W;
}

double DriveSystem::nextDue_s(double now_s) const {
    double next = m_surroundings.nextKink_s(now_s);
    for (const PlacedLaw& placed : m_laws) {
        const auto memory = std::span(m_memory).subspan(placed.memoryBegin, placed.memorySize);
        next = std::min(next, placed.law->nextDue_s(now_s, memory));
    }
    return next;
}

std::vector<Channel> DriveSystem::channels() const {
    std::vector<Channel> channels;
    for (const auto& [end, node] : m_terminals) {
        channels.push_back(voltageChannel(end));
    }
    for (const auto& [end, gas] : m_ports) {
        channels.push_back(vacuumChannel(end));
    }
    for (const PlacedLaw& placed : m_laws) {
        for (Probe& probe : placed.law->probes()) {
            ChannelKey key{placed.subject, placed.id, probe.name};
            channels.push_back({std::move(key), std::move(probe), {}, {}});
        }
    }
    return channels;
}

void DriveSystem::channelValues(double time_s, std::span<const double> x, std::span<double> values) const {
    const Point everything{time_s, x, {}, m_surroundings};
    const double ambient_Pa = m_surroundings.ambientPressure_Pa(time_s);
    std::size_t next = 0;
    for (const auto& [end, node] : m_terminals) {
        values[next++] = everything[node];
    }
    for (const auto& [end, gas] : m_ports) {
        values[next++] = ambient_Pa - everything[gas.pressure];
    }
    for (const PlacedLaw& placed : m_laws) {
        const std::size_t count = placed.probeCount;
        placed.law->probeValues(pointFor(placed, time_s, x), values.subspan(next, count));
        next += count;
    }
}

} // namespace pumpwright
