#pragma once

#include "core/parts/part_kind.h"

#include <algorithm>
#include <cassert>
#include <cmath>
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
    explicit PlainEquations(std::size_t size) : m_size(size), m_f(size), m_slopes(size * size) {}

    void add(Unknown row, double value) override {
        if (row != kReference) {
            m_f.at(static_cast<std::size_t>(row)) += value;
        }
    }
    void addSlope(Unknown row, Unknown column, double slope) override {
        if (row != kReference && column != kReference) {
            m_slopes.at(place(row, column)) += slope;
        }
    }

    double f(Unknown row) const { return m_f.at(static_cast<std::size_t>(row)); }
    double slope(Unknown row, Unknown column) const { return m_slopes.at(place(row, column)); }

private:
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

    // What a law is built from.
    Unknown node(std::string_view terminal) override { return m_nodes.at(std::string(terminal)); }
    GasNode gas(std::string_view port) override { return gasAt(std::string(port), 1e-3); }
    GasNode addGas(std::string_view name, double volume_m3, bool) override {
        return gasAt("inside: " + std::string(name), volume_m3);
    }
    void setPortVolume(std::string_view port, double volume_m3, bool) override {
        gasAt(std::string(port), volume_m3);
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

    /// Air at the ambient state, so that pressure, mass and energy belong together.
    GasNode gasAt(const std::string& name, double volume_m3) {
        const auto found = m_gas.find(name);
        if (found != m_gas.end()) {
            return found->second;
        }
        const double pressure_Pa = m_surroundings.ambientPressure_Pa(0);
        const double mass_kg = pressure_Pa * volume_m3 / (287.05 * m_surroundings.ambientTemperature_K());
        const double energy_J = pressure_Pa * volume_m3 / 0.4;
        GasNode node;
        node.pressure = append(BenchUnknown::Pressure, pressure_Pa);
        node.mass = append(BenchUnknown::Mass, mass_kg);
        node.energy = append(BenchUnknown::Energy, energy_J);
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

} // namespace pumpwright::test
