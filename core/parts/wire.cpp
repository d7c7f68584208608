#include "core/parts/conductor.h"
#include "core/parts/part_kind.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pumpwright {
namespace {

/// [Ω] that even the shortest wire keeps: its two crimps are worth more than that.
constexpr double kLeastResistance_ohm = 1e-5;
/// Heat, values from memory of textbook heat transfer: copper and PVC per volume [J/m³K], PVC [W/mK], still
/// air with radiation [W/m²K].
constexpr double kCopperHeat = 3.44e6;
constexpr double kInsulationHeat = 1.5e6;
constexpr double kInsulationConductivity = 0.17;
constexpr double kSurfaceTransfer = 20;
/// A stranded conductor is this much thicker than a solid one of the same area.
constexpr double kStrandedDiameterShare = 1.12;

/// Heat of one metre of wire.
struct WireHeat {
    double capacity_JperKm;
    double resistance_KmperW;
};

/// The wall is assumed, as thin-wall road-vehicle wire has it: a fifth of the conductor, 0.28 to 0.65 mm.
WireHeat wireHeat(double area_m2, int bundled) {
    const double conductor_m = kStrandedDiameterShare * std::sqrt(4 * area_m2 / std::numbers::pi);
    const double wall_m = std::clamp(0.2 * conductor_m, 0.28e-3, 0.65e-3);
    const double outer_m = conductor_m + 2 * wall_m;
    const double insulation_m2 = std::numbers::pi / 4 * (outer_m * outer_m - conductor_m * conductor_m);
    const double through = std::log(outer_m / conductor_m) / (2 * std::numbers::pi * kInsulationConductivity);
    const double off = 1 / (kSurfaceTransfer * std::numbers::pi * outer_m);
    // In a bundle the same rise is reached at bundleShare() of the current, so with its square of the heat.
    const double share = bundleShare(bundled);
    return {area_m2 * kCopperHeat + insulation_m2 * kInsulationHeat, (through + off) / (share * share)};
}

class WireLaw final : public Law {
public:
    WireLaw(const Wire& wire, Unknown from, Unknown to, LawContext& context)
        : m_from(from), m_to(to), m_lengthPerArea_perm(wire.length_m / wire.area_m2),
          m_ambient_K(context.surroundings().ambientTemperature_K()) {
        const WireHeat heat = wireHeat(wire.area_m2, wire.bundled);
        const double length_m = std::max(wire.length_m, 1e-3);
        m_heatCapacity_JperK = heat.capacity_JperKm * length_m;
        m_heatLoss_WperK = length_m / heat.resistance_KmperW;
        m_temperature = context.addUnknown({"conductor temperature", m_ambient_K, 0.01});
    }

    void addEquations(const Point& at, Equations& equations) const override {
        const double voltage_V = at[m_from] - at[m_to];
        const double conductance_S = conductance(at);
        const double conductanceSlope =
            -conductance_S * conductance_S * m_lengthPerArea_perm * copperResistivitySlope(at[m_temperature]);
        equations.addConductance(at, m_from, m_to, conductance_S);
        equations.addCurrentSlope(m_from, m_to, m_temperature, voltage_V * conductanceSlope);

        const double rise_K = at[m_temperature] - m_ambient_K;
        equations.add(m_temperature, voltage_V * voltage_V * conductance_S - m_heatLoss_WperK * rise_K);
        equations.addSlope(m_temperature, m_from, 2 * voltage_V * conductance_S);
        equations.addSlope(m_temperature, m_to, -2 * voltage_V * conductance_S);
        equations.addSlope(m_temperature, m_temperature,
                           voltage_V * voltage_V * conductanceSlope - m_heatLoss_WperK);
    }

    void addMasses(MassMatrix& masses) const override {
        masses.add(m_temperature, m_temperature, m_heatCapacity_JperK);
    }

    std::vector<Probe> probes() const override {
        return {{probe::kCurrent, "current", QuantityKind::Current, false, 1e-3},
                {probe::kTemperature, "conductor temperature", QuantityKind::Temperature, false, 0.1}};
    }

    void probeValues(const Point& at, std::span<double> values) const override {
        values[0] = conductance(at) * (at[m_from] - at[m_to]);
        values[1] = at[m_temperature];
    }

private:
    double conductance(const Point& at) const {
        const double resistance_ohm = copperResistivity_ohmm(at[m_temperature]) * m_lengthPerArea_perm;
        return 1 / (resistance_ohm + kLeastResistance_ohm);
    }

    Unknown m_from;
    Unknown m_to;
    double m_lengthPerArea_perm;
    double m_ambient_K;
    double m_heatCapacity_JperK = 0;
    double m_heatLoss_WperK = 0;
    Unknown m_temperature = kReference;
};

} // namespace

std::unique_ptr<Law> wireLaw(const Wire& wire, Unknown from, Unknown to, LawContext& context) {
    return std::make_unique<WireLaw>(wire, from, to, context);
}

} // namespace pumpwright
