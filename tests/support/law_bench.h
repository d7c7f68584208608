#pragma once

#include "core/parts/gas.h"
#include "core/parts/part_kind.h"
#include "tests/support/catch.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <functional>
#include <map>
#include <memory>
#include <random>
#include <string>
#include <utility>
#include <vector>

namespace pumpwright::test {

/// f and its slopes as plain arrays.
class PlainEquations final : public Equations {
public:
    explicit PlainEquations(std::size_t size) : PlainEquations(size, std::vector<double>(size)) {}

    double f(Unknown row) const { return m_f.at(static_cast<std::size_t>(row)); }
    double slope(Unknown row, Unknown column) const { return m_slopes.at(place(row, column)); }

private:
    // The array moves in whole, so that the base may keep its address.
    PlainEquations(std::size_t size, std::vector<double> f)
        : Equations(f.data(), true), m_size(size), m_f(std::move(f)), m_slopes(size * size) {}
    void takeSlope(Unknown row, Unknown column, double slope) override {
        m_slopes.at(place(row, column)) += slope;
    }
    std::size_t place(Unknown row, Unknown column) const {
        return static_cast<std::size_t>(row) * m_size + static_cast<std::size_t>(column);
    }

    std::size_t m_size;
    std::vector<double> m_f;
    std::vector<double> m_slopes;
};

/// M as a plain array.
class PlainMasses final : public MassMatrix {
public:
    void add(Unknown row, Unknown column, double value) override {
        if (row != kReference && column != kReference) {
            m_entries[{row, column}] += value;
        }
    }
    double at(Unknown row, Unknown column) const {
        const auto found = m_entries.find({row, column});
        return found == m_entries.end() ? 0 : found->second;
    }

private:
    std::map<std::pair<Unknown, Unknown>, double> m_entries;
};

/// What an unknown of the bench is, which says what values are worth trying.
enum class BenchUnknown { Node, Pressure, Mass, Energy, Own };

/// One law on a bench: every terminal has a node of its own, every port gas of its own, and the test sets the
/// unknowns.
class LawBench final : public LawContext {
public:
    LawBench(const PartKind& kind, const Part& part, DrivePlan plan = {}, PartId id = {"p1"})
        : m_surroundings(std::move(plan)), m_id(std::move(id)) {
        for (const TerminalSpec& terminal : kind.terminals(part)) {
            m_nodes[terminal.name] = append(BenchUnknown::Node, 0);
        }
        m_law = kind.law(part, *this);
        m_memory = m_law->memoryAtStart();
    }

    /// A wire between two nodes "from" and "to".
    explicit LawBench(const Wire& wire, DrivePlan plan = {}) : m_surroundings(std::move(plan)) {
        m_nodes["from"] = append(BenchUnknown::Node, 0);
        m_nodes["to"] = append(BenchUnknown::Node, 0);
        m_law = wireLaw(wire, m_nodes["from"], m_nodes["to"], *this);
        m_memory = m_law->memoryAtStart();
    }

    /// A law that the test builds itself.
    using Build = std::function<std::unique_ptr<Law>(LawContext&)>;
    explicit LawBench(const Build& build, DrivePlan plan = {}) : m_surroundings(std::move(plan)) {
        m_law = build(*this);
        m_memory = m_law->memoryAtStart();
    }

    // What a law is built from.
    Unknown node(std::string_view terminal) override { return m_nodes.at(std::string(terminal)); }
    GasNode gas(std::string_view port) override { return m_gas.at(std::string(port)); }
    GasNode addGas(std::string_view name, double volume_m3, bool evacuated) override {
        return gasAt(std::string(name), volume_m3, evacuated);
    }
    void setPortVolume(std::string_view port, double volume_m3, bool evacuated) override {
        gasAt(std::string(port), volume_m3, evacuated);
    }
    void joinPorts(std::string_view port, std::string_view other) override {
        m_gas[std::string(other)] = m_gas.at(std::string(port));
    }
    Unknown addUnknown(const UnknownSpec& spec) override {
        const Unknown unknown = append(BenchUnknown::Own, spec.start);
        m_names[spec.name] = unknown;
        return unknown;
    }
    const PartId& partId() const override { return m_id; }
    const Surroundings& surroundings() const override { return m_surroundings; }

    // What a test does with it.
    const Law& law() const { return *m_law; }
    std::size_t size() const { return m_x.size(); }
    BenchUnknown sort(Unknown unknown) const { return m_sorts.at(static_cast<std::size_t>(unknown)); }
    double start(Unknown unknown) const { return m_starts.at(static_cast<std::size_t>(unknown)); }
    Unknown own(const std::string& name) const { return m_names.at(name); }
    double& x(Unknown unknown) { return m_x.at(static_cast<std::size_t>(unknown)); }
    double& voltage(const std::string& terminal) { return x(m_nodes.at(terminal)); }
    std::vector<double>& memory() { return m_memory; }
    /// Fills a port or a volume inside with gas.
    void fill(const std::string& name, double volume_m3, double pressure_Pa, double temperature_K = 293.15) {
        const GasNode node = m_gas.at(name);
        x(node.pressure) = pressure_Pa;
        x(node.mass) = air::mass_kg(pressure_Pa, volume_m3, temperature_K);
        x(node.energy) = air::energy_J(x(node.mass), temperature_K);
    }
    double ambient_Pa() const { return m_surroundings.ambientPressure_Pa(time_s); }
    double time_s = 0;

    Point point() const { return {time_s, m_x, m_memory, m_surroundings}; }

    PlainEquations equations() const {
        PlainEquations equations(m_x.size());
        m_law->addEquations(point(), equations);
        return equations;
    }
    PlainMasses masses() const {
        PlainMasses masses;
        m_law->addMasses(masses);
        return masses;
    }

    double probe(const std::string& name) const {
        const auto probes = m_law->probes();
        std::vector<double> values(probes.size());
        m_law->probeValues(point(), values);
        for (std::size_t i = 0; i < probes.size(); ++i) {
            if (probes[i].name == name) {
                return values[i];
            }
        }
        assert(!"a test asks only for probes that the law has");
        return std::nan("");
    }

    /// Current [A] that leaves the node of a terminal into the law.
    double currentInto(const std::string& terminal) const { return -equations().f(m_nodes.at(terminal)); }

    /// Lets everything happen that is due now; returns the texts. More than a hundred events at one instant
    /// are an endless loop, and end in a text that no test expects.
    std::vector<std::string> settle() {
        std::vector<std::string> texts;
        for (int round = 0; round < 100; ++round) {
            const auto event = dueEvent();
            if (event == m_law->eventCount()) {
                return texts;
            }
            texts.push_back(m_law->happen(event, point(), m_memory));
        }
        return {"endless loop of events"};
    }

    /// Moves the clock on to `until_s`, stopping at everything that the law itself has due; the unknowns
    /// stay.
    void runTo(double until_s) {
        while (time_s < until_s) {
            time_s = std::min(until_s, m_law->nextDue_s(time_s, m_memory));
            settle();
        }
    }

private:
    std::size_t dueEvent() const {
        std::size_t event = 0;
        while (event < m_law->eventCount() && m_law->eventValue(event, point()) < 0) {
            ++event;
        }
        return event;
    }

    Unknown append(BenchUnknown sort, double start) {
        m_x.push_back(start);
        m_starts.push_back(start);
        m_sorts.push_back(sort);
        return static_cast<Unknown>(m_x.size() - 1);
    }

    /// Air at ambient temperature, so that pressure, mass and energy belong together.
    GasNode gasAt(const std::string& name, double volume_m3, bool evacuated) {
        const double vacuum_Pa = evacuated ? m_surroundings.plan().initialVacuum_Pa : 0;
        const double pressure_Pa = m_surroundings.ambientPressure_Pa(0) - vacuum_Pa;
        const double temperature_K = m_surroundings.ambientTemperature_K();
        const double mass_kg = air::mass_kg(pressure_Pa, volume_m3, temperature_K);
        GasNode node;
        node.pressure = append(BenchUnknown::Pressure, pressure_Pa);
        node.mass = append(BenchUnknown::Mass, mass_kg);
        node.energy = append(BenchUnknown::Energy, air::energy_J(mass_kg, temperature_K));
        m_gas[name] = node;
        return node;
    }

    Surroundings m_surroundings;
    PartId m_id;
    std::map<std::string, Unknown> m_nodes;
    std::map<std::string, GasNode> m_gas;
    std::map<std::string, Unknown> m_names;
    std::vector<double> m_x;
    std::vector<double> m_starts;
    std::vector<BenchUnknown> m_sorts;
    std::vector<double> m_memory;
    std::unique_ptr<Law> m_law;
};

/// Puts every unknown of the bench somewhere within what a run may visit.
inline void scatter(LawBench& bench, std::mt19937& random) {
    std::uniform_real_distribution<double> share(-1, 1);
    for (Unknown u = 0; u < static_cast<Unknown>(bench.size()); ++u) {
        const double start = bench.start(u);
        switch (bench.sort(u)) {
        case BenchUnknown::Node:
            bench.x(u) = 8 * share(random) + 3;
            break;
        case BenchUnknown::Pressure:
        case BenchUnknown::Mass:
        case BenchUnknown::Energy:
            bench.x(u) = start * (0.6 + 0.35 * share(random));
            break;
        case BenchUnknown::Own:
            bench.x(u) = start + share(random) * std::max(0.5, 0.2 * std::abs(start));
            break;
        }
    }
}

/// Step of the difference quotient for one unknown.
inline double benchStep(const LawBench& bench, Unknown unknown) {
    const double start = std::abs(bench.start(unknown));
    switch (bench.sort(unknown)) {
    case BenchUnknown::Pressure:
    case BenchUnknown::Mass:
    case BenchUnknown::Energy:
        return 1e-5 * start;
    case BenchUnknown::Node:
    case BenchUnknown::Own:
        break;
    }
    return 1e-6 * std::max(1.0, start);
}

/// Holds every slope that the law states at this point against the difference quotient of what it adds.
inline void checkSlopes(LawBench& bench) {
    const PlainEquations stated = bench.equations();
    const auto unknowns = static_cast<Unknown>(bench.size());
    const auto size = [&](Unknown u) { return std::max(std::abs(bench.x(u)), std::abs(bench.start(u))); };
    std::vector<double> largest; // of each row, by what its slopes move
    for (Unknown row = 0; row < unknowns; ++row) {
        largest.push_back(0);
        for (Unknown column = 0; column < unknowns; ++column) {
            largest.back() = std::max(largest.back(), std::abs(stated.slope(row, column)) * size(column));
        }
    }
    for (Unknown column = 0; column < unknowns; ++column) {
        const double here = bench.x(column);
        const double step = benchStep(bench, column);
        const auto shifted = [&](double by) {
            bench.x(column) = here + by;
            return bench.equations();
        };
        const PlainEquations up = shifted(step);
        const PlainEquations down = shifted(-step);
        const PlainEquations halfUp = shifted(step / 2);
        const PlainEquations halfDown = shifted(-step / 2);
        bench.x(column) = here;
        for (Unknown row = 0; row < unknowns; ++row) {
            // One step of Richardson's extrapolation: the error goes with the fourth power of the step.
            const double coarse = (up.f(row) - down.f(row)) / (2 * step);
            const double fine = (halfUp.f(row) - halfDown.f(row)) / step;
            const double difference = (4 * fine - coarse) / 3;
            const double rounding = 1e-14 * (std::abs(stated.f(row)) + std::abs(up.f(row))) / step;
            const double small =
                std::min(1e-9, 1e-7 * largest[static_cast<std::size_t>(row)] / std::max(size(column), step));
            INFO("row " << row << ", column " << column << ", at " << here);
            CHECK(std::abs(stated.slope(row, column) - difference) <=
                  1e-5 * std::abs(difference) + 100 * rounding + small);
        }
    }
}

} // namespace pumpwright::test
