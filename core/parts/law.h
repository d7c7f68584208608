#pragma once

#include "core/parts/account.h"
#include "core/parts/probe.h"
#include "core/parts/surroundings.h"

#include <limits>
#include <memory>
#include <span>
#include <string>
#include <vector>

namespace pumpwright {

/// Index of an unknown of the whole system. The reference node (0 V, and the atmosphere) is not an unknown.
using Unknown = int;
inline constexpr Unknown kReference = -1;

/// What a law sees: one instant of the run.
struct Point {
    double time_s;
    std::span<const double> x;      ///< all unknowns, SI
    std::span<const double> memory; ///< this law's own discrete state
    const Surroundings& surroundings;

    double operator[](Unknown unknown) const {
        return unknown == kReference ? 0.0 : x[static_cast<std::size_t>(unknown)];
    }
};

/// Takes up what laws add to the right-hand side f and its slopes, of the system M·dx/dt = f(x, t).
/// The row of an electrical node is Kirchhoff's current law: the sum of currents that enter it.
///
/// Most of a run's time goes by in here, so only a taken slope is a virtual call: f is nearly always asked
/// for alone.
class Equations {
public:
    virtual ~Equations() = default;

    /// f[row] += value; the reference node's row takes anything and means nothing.
    void add(Unknown row, double value) {
        if (row != kReference) {
            m_f[static_cast<std::size_t>(row)] += value;
        }
    }
    /// df[row]/dx[column] += slope.
    void addSlope(Unknown row, Unknown column, double slope) {
        if (m_takesSlopes && row != kReference && column != kReference) {
            takeSlope(row, column, slope);
        }
    }
    /// A current [A] that leaves node `from` and enters node `to` through the part.
    void addCurrent(Unknown from, Unknown to, double current_A) {
        add(from, -current_A);
        add(to, current_A);
    }
    /// How that current grows with one unknown.
    void addCurrentSlope(Unknown from, Unknown to, Unknown column, double slope) {
        addSlope(from, column, -slope);
        addSlope(to, column, slope);
    }
    /// A conductance [S] between two nodes that carry the voltages of `at`.
    void addConductance(const Point& at, Unknown from, Unknown to, double conductance_S) {
        addCurrent(from, to, conductance_S * (at[from] - at[to]));
        if (m_takesSlopes) {
            addCurrentSlope(from, to, from, conductance_S);
            addCurrentSlope(from, to, to, -conductance_S);
        }
    }

    /// False while only f is asked for: slopes that cost something need not be worked out then.
    bool takesSlopes() const { return m_takesSlopes; }

protected:
    Equations(double* f, bool takesSlopes) : m_f(f), m_takesSlopes(takesSlopes) {}
    virtual void takeSlope(Unknown row, Unknown column, double slope) = 0;

private:
    double* m_f;
    bool m_takesSlopes;
};

/// Takes up the constant entries of M.
class MassMatrix {
public:
    virtual ~MassMatrix() = default;
    virtual void add(Unknown row, Unknown column, double value) = 0;
    /// A capacitance [F] between two nodes.
    void addCapacitance(Unknown a, Unknown b, double capacitance_F);
};

/// Behaviour of one part, wire or hose: equations between unknowns, and jumps of its discrete state.
///
/// A law is immutable. Its discrete state (contact closed, timer due, fuse open) is a few numbers of
/// `Point::memory`, kept by the engine, so that a run can be copied and repeated.
class Law {
public:
    virtual ~Law() = default;

    /// Adds the part's contribution to f at this instant, and every slope of what it adds.
    virtual void addEquations(const Point& at, Equations& equations) const = 0;
    /// Adds the part's constant entries of M. Rows without entries are algebraic.
    virtual void addMasses(MassMatrix& masses) const { static_cast<void>(masses); }

    /// The discrete state before the run.
    virtual std::vector<double> memoryAtStart() const { return {}; }
    virtual std::size_t eventCount() const { return 0; }
    /// At or above zero, event `event` is due. Must be below zero right after happen().
    virtual double eventValue(std::size_t event, const Point& at) const;
    /// Changes the memory; returns what the event list shows ("contacts close"), or an empty text for
    /// nothing.
    virtual std::string happen(std::size_t event, const Point& at, std::span<double> memory) const;
    /// The next time [s] at which this law is sure to have an event or a kink; steps end there.
    virtual double nextDue_s(double now_s, std::span<const double> memory) const {
        static_cast<void>(now_s);
        static_cast<void>(memory);
        return std::numeric_limits<double>::infinity();
    }

    /// The quantities that the recording keeps, in the order of probeValues().
    virtual std::vector<Probe> probes() const { return {}; }
    virtual void probeValues(const Point& at, std::span<double> values) const {
        static_cast<void>(at);
        static_cast<void>(values);
    }

    /// Adds what the part takes in from outside the circuit, gives off and holds, which its equations must
    /// bear out: what flows in over its terminals and ports and from outside goes out or is held.
    virtual void addAccount(const Point& at, Account& account) const {
        static_cast<void>(at);
        static_cast<void>(account);
    }
};

/// An unknown that a law adds: value at the start and the size [SI] below which errors do not matter.
struct UnknownSpec {
    std::string name; ///< for messages: "coil current"
    double start = 0;
    double tolerance = 1e-6;
};

/// One volume of gas: its pressure [Pa], mass [kg] and internal energy [J]. The atmosphere has no unknowns.
struct GasNode {
    Unknown pressure = kReference;
    Unknown mass = kReference;
    Unknown energy = kReference;
    bool isAtmosphere() const { return mass == kReference; }
};

/// What a part kind gets to build its law from.
class LawContext {
public:
    virtual ~LawContext() = default;
    /// Node of a terminal of the part that is being built.
    virtual Unknown node(std::string_view terminal) = 0;
    /// Gas at a port of the part; its unknowns start at the plan's initial state.
    virtual GasNode gas(std::string_view port) = 0;
    /// A further volume of gas inside the part; `evacuated` ones start at the plan's initial vacuum, others
    /// at ambient.
    virtual GasNode addGas(std::string_view name, double volume_m3, bool evacuated) = 0;
    /// Says how large the volume behind a port is, once for each port of the part, before gas() of that port.
    virtual void setPortVolume(std::string_view port, double volume_m3, bool evacuated) = 0;
    /// Says that port `other` opens into the volume behind `port`: both are one gas node, whose equations the
    /// part's law adds once. After setPortVolume() of `port`, instead of setPortVolume() of `other`.
    virtual void joinPorts(std::string_view port, std::string_view other) = 0;
    virtual Unknown addUnknown(const UnknownSpec& spec) = 0;
    /// The part that is being built, empty for a wire or hose: the plan's switch moves name their part by it.
    virtual const PartId& partId() const = 0;
    virtual const Surroundings& surroundings() const = 0;
};

} // namespace pumpwright
