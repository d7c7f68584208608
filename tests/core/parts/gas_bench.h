#pragma once

#include "core/parts/gas.h"
#include "core/parts/part_kind.h"
#include "tests/support/catch.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <string>
#include <vector>

namespace pumpwright::tests {

/// Unknowns of a few gas nodes, terminals and law unknowns, and what laws add to their rows.
class GasBench final : public LawContext, public Equations, public MassMatrix {
public:
    explicit GasBench(DrivePlan plan = {}) : m_surroundings(std::move(plan)) {}

    // What a kind builds its law from.
    Unknown node(std::string_view terminal) override {
        const auto [place, isNew] = m_nodes.try_emplace(std::string(terminal), 0);
        if (isNew) {
            place->second = addUnknown({std::string(terminal), 0, 1e-6});
        }
        return place->second;
    }
    GasNode gas(std::string_view port) override { return m_ports.at(std::string(port)); }
    GasNode addGas(std::string_view name, double volume_m3, bool evacuated) override {
        const double vacuum_Pa = evacuated ? m_surroundings.plan().initialVacuum_Pa : 0;
        const double pressure_Pa = m_surroundings.ambientPressure_Pa(0) - vacuum_Pa;
        const double temperature_K = m_surroundings.ambientTemperature_K();
        const double mass_kg = air::mass_kg(pressure_Pa, volume_m3, temperature_K);
        const std::string prefix(name);
        return {addUnknown({prefix + " pressure", pressure_Pa, 1}),
                addUnknown({prefix + " mass", mass_kg, 1e-9}),
                addUnknown({prefix + " energy", air::energy_J(mass_kg, temperature_K), 1e-4})};
    }
    void setPortVolume(std::string_view port, double volume_m3, bool evacuated) override {
        m_ports.emplace(std::string(port), addGas(port, volume_m3, evacuated));
    }
    void joinPorts(std::string_view port, std::string_view other) override {
        m_ports.emplace(std::string(other), gas(port));
    }
    Unknown addUnknown(const UnknownSpec& spec) override {
        x.push_back(spec.start);
        names.push_back(spec.name);
        return static_cast<Unknown>(x.size()) - 1;
    }
    const PartId& partId() const override { return m_partId; }
    const Surroundings& surroundings() const override { return m_surroundings; }

    // What a law adds.
    void add(Unknown row, double value) override {
        if (row != kReference) {
            f[static_cast<std::size_t>(row)] += value;
        }
    }
    void addSlope(Unknown row, Unknown column, double slope) override {
        if (row != kReference && column != kReference) {
            slopes[{row, column}] += slope;
        }
    }
    void add(Unknown row, Unknown column, double value) override {
        if (row != kReference && column != kReference) {
            masses[{row, column}] += value;
        }
    }

    Point point(double time_s = 0) const { return {time_s, x, memory, m_surroundings}; }
    void clear() {
        f.assign(x.size(), 0);
        slopes.clear();
    }
    double& operator[](Unknown unknown) { return x[static_cast<std::size_t>(unknown)]; }
    /// Sets pressure and temperature of the gas in a volume.
    void fill(const GasNode& gas, double volume_m3, double pressure_Pa, double temperature_K) {
        const double mass_kg = air::mass_kg(pressure_Pa, volume_m3, temperature_K);
        (*this)[gas.pressure] = pressure_Pa;
        (*this)[gas.mass] = mass_kg;
        (*this)[gas.energy] = air::energy_J(mass_kg, temperature_K);
    }

    std::vector<double> x;
    std::vector<double> memory;
    std::vector<std::string> names;
    std::vector<double> f;
    std::map<std::pair<Unknown, Unknown>, double> slopes;
    std::map<std::pair<Unknown, Unknown>, double> masses;

private:
    Surroundings m_surroundings;
    PartId m_partId{"p1"};
    std::map<std::string, Unknown> m_nodes;
    std::map<std::string, GasNode, std::less<>> m_ports;
};

/// Takes the bench's point apart: true where every slope that the law states is the finite difference of what
/// it adds. A slope counts by what it moves: itself times the size of its unknown, against its row's largest.
inline bool slopesMatch(GasBench& bench, const Law& law, double time_s = 0) {
    const std::size_t count = bench.x.size();
    bench.clear();
    law.addEquations(bench.point(time_s), bench);
    const auto stated = bench.slopes;
    const std::vector<double> start = bench.x;
    std::vector<std::vector<double>> moved(count, std::vector<double>(count));
    std::vector<double> largest(count, 0.0);
    const auto size = [&](std::size_t column) { return std::max(std::abs(start[column]), 1e-6); };
    const auto fAt = [&](std::size_t column, double value) {
        bench.x[column] = value;
        bench.clear();
        law.addEquations(bench.point(time_s), bench);
        bench.x[column] = start[column];
        return bench.f;
    };
    for (std::size_t column = 0; column < count; ++column) {
        const double step = 1e-6 * size(column);
        const std::vector<double> above = fAt(column, start[column] + step);
        const std::vector<double> below = fAt(column, start[column] - step);
        for (std::size_t row = 0; row < count; ++row) {
            moved[row][column] = (above[row] - below[row]) / 2e-6;
            largest[row] = std::max(largest[row], std::abs(moved[row][column]));
        }
    }
    bool match = true;
    for (std::size_t row = 0; row < count; ++row) {
        for (std::size_t column = 0; column < count; ++column) {
            const auto found = stated.find({static_cast<Unknown>(row), static_cast<Unknown>(column)});
            const double slope = found == stated.end() ? 0.0 : found->second;
            const double difference = std::abs(slope * size(column) - moved[row][column]);
            if (difference > 1e-5 * largest[row] + 1e-12) {
                UNSCOPED_INFO(bench.names[row] << " towards " << bench.names[column] << ": stated "
                                               << slope * size(column) << ", found " << moved[row][column]);
                match = false;
            }
        }
    }
    return match;
}

} // namespace pumpwright::tests
