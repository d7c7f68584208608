#include "core/parts/contact.h"

#include "core/parts/saturation.h"

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

/// [F] of an open gap with its blades. Common practice, no published source.
constexpr double kGapCapacitance_F = 5e-12;
/// [S] along the insulation of an open contact; keeps a node that hangs on it from floating.
constexpr double kGapLeak_S = 1e-12;
/// [S] of the gap once it has broken down, and [V] over which the breakdown sets in. Small against the
/// breakdown voltage at every current of a 12 V system; the exact size does not matter.
constexpr double kDischarge_S = 1.0;
constexpr double kDischargeOnset_V = 1.0;
/// [V] below the breakdown voltage where the onset is nil: e⁻⁵⁰ of the discharge.
constexpr double kNoDischarge_V = 50 * kDischargeOnset_V;

/// Slope and value of an odd function of the voltage: nothing inside ±limit, a line beyond.
SmoothValue discharge(double voltage_V, double limit_V) {
    if (std::abs(voltage_V) < limit_V - kNoDischarge_V) {
        return {0, 0};
    }
    const SmoothValue above = smoothRamp(voltage_V - limit_V, kDischargeOnset_V);
    const SmoothValue below = smoothRamp(-voltage_V - limit_V, kDischargeOnset_V);
    return {kDischarge_S * (above.value - below.value), kDischarge_S * (above.slope + below.slope)};
}

SmoothValue openGap(double voltage_V, double limit_V) {
    const SmoothValue spark = discharge(voltage_V, limit_V);
    return {spark.value + kGapLeak_S * voltage_V, spark.slope + kGapLeak_S};
}

} // namespace

ContactElement::ContactElement(Unknown from, Unknown to, double resistance_ohm, double gapBreakdown_V)
    : m_from(from), m_to(to), m_conductance_S(1 / resistance_ohm), m_gapBreakdown_V(gapBreakdown_V) {}

void ContactElement::addEquations(const Point& at, bool closed, Equations& equations) const {
    if (closed) {
        equations.addConductance(at, m_from, m_to, m_conductance_S);
        return;
    }
    const SmoothValue gap = openGap(at[m_from] - at[m_to], m_gapBreakdown_V);
    equations.addCurrent(m_from, m_to, gap.value);
    equations.addCurrentSlope(m_from, m_to, m_from, gap.slope);
    equations.addCurrentSlope(m_from, m_to, m_to, -gap.slope);
}

void ContactElement::addMasses(MassMatrix& masses) const {
    masses.addCapacitance(m_from, m_to, kGapCapacitance_F);
}

void ContactElement::addAccount(const Point& at, bool closed, Account& account) const {
    const double voltage_V = at[m_from] - at[m_to];
    account.giveOff(voltage_V * current_A(at, closed));
    account.held_J += 0.5 * kGapCapacitance_F * voltage_V * voltage_V;
}

double ContactElement::current_A(const Point& at, bool closed) const {
    const double voltage_V = at[m_from] - at[m_to];
    return closed ? m_conductance_S * voltage_V : openGap(voltage_V, m_gapBreakdown_V).value;
}

ContactElement contactElement(const PartKind& kind, const Part& part, Unknown from, Unknown to) {
    return {from, to, kind.value(part, "contactResistance_ohm"), kind.value(part, "gapBreakdown_V")};
}

ContactRating contactRating(const PartKind& kind, const Part& part) {
    return {kind.value(part, "continuous_A"),     kind.value(part, "make_A"),
            kind.value(part, "breakResistive_A"), kind.value(part, "breakInductive_A"),
            kind.value(part, "minimumLoad_A"),    kind.value(part, "ratedOperations")};
}

Contact contactFeature(const PartKind& kind, const Part& part, std::string from, std::string to,
                       Operator by) {
    Contact contact;
    contact.from = std::move(from);
    contact.to = std::move(to);
    contact.rating = contactRating(kind, part);
    contact.by = by;
    contact.withstand_V = kind.value(part, "gapBreakdown_V");
    return contact;
}

std::vector<Probe> contactProbes(std::string_view name) {
    const std::string tail = name.empty() ? std::string() : " " + std::string(name);
    return {{probe::kContact + tail, "contact" + tail, QuantityKind::Number, true, 0.5},
            {probe::kContactCurrent + tail, "contact current" + tail, QuantityKind::Current, false, 1e-3}};
}

} // namespace pumpwright
