#include "core/parts/conductor.h"
#include "core/parts/part_kind.h"
#include "core/units/text.h"

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

/// [Ω] that even the shortest wire keeps: its two crimps are worth more than that.
constexpr double kLeastResistance_ohm = 1e-5;

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

    void addAccount(const Point& at, Account& account) const override {
        const double rise_K = at[m_temperature] - m_ambient_K;
        account.giveOff(m_heatLoss_WperK * rise_K);
        account.held_J += m_heatCapacity_JperK * rise_K;
    }

    std::vector<Probe> probes() const override {
        return {{probe::kCurrent, words("current"), QuantityKind::Current, false, 1e-3},
                {probe::kTemperature, words("conductor temperature"), QuantityKind::Temperature, false, 0.1}};
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
