#include "core/parts/gas.h"
#include "core/parts/part_kind.h"
#include "core/units/atmosphere.h"
#include "core/units/text.h"

namespace pumpwright {
namespace {

/// A hose has friction, and passes no more than the orifice of its bore. Its own volume is not counted: half
/// a metre of 9 mm hose holds 0.03 L, and the volumes at its ends stand for it.
class HoseLaw final : public Law {
public:
    HoseLaw(const Hose& hose, GasNode from, GasNode to, double viscosity_Pas)
        : m_from(from), m_to(to), m_diameter_m(hose.innerDiameter_m), m_length_m(hose.length_m),
          m_viscosity_Pas(viscosity_Pas), m_bore(Orifice::hole(hose.innerDiameter_m)),
          m_leak(Orifice::hole(hose.leakHole_m)) {}

    void addEquations(const Point& at, Equations& equations) const override {
        const GasSides sides = gasSides(at, m_from, m_to);
        addGasFlow(equations, sides, flow(sides));
        if (m_leak.effectiveArea_m2 > 0) {
            const GasSides outside = gasSides(at, {}, m_from);
            addGasFlow(equations, outside, orificeFlow(m_leak, flowSides(outside)));
        }
    }
    void addAccount(const Point& at, Account& account) const override {
        const GasSides outside = gasSides(at, {}, m_from);
        addGasFlowAccount(outside, orificeFlow(m_leak, flowSides(outside)), account);
    }

    std::vector<Probe> probes() const override {
        return {{probe::kFlow, words("air flow"), QuantityKind::Number, false, 1e-7}};
    }

    void probeValues(const Point& at, std::span<double> values) const override {
        values[0] = flow(gasSides(at, m_from, m_to)).value;
    }

private:
    MassFlow flow(const GasSides& sides) const {
        const FlowSides drive = flowSides(sides);
        return limitedFlow(laminarFlow(m_diameter_m, m_length_m, m_viscosity_Pas, drive),
                           orificeFlow(m_bore, drive));
    }

    GasNode m_from;
    GasNode m_to;
    double m_diameter_m;
    double m_length_m;
    double m_viscosity_Pas;
    Orifice m_bore;
    Orifice m_leak; ///< from the atmosphere to the `from` end
};

} // namespace

std::unique_ptr<Law> hoseLaw(const Hose& hose, GasNode from, GasNode to, LawContext& context) {
    const double viscosity_Pas = airViscosity_PaS(Temperature(context.surroundings().ambientTemperature_K()));
    return std::make_unique<HoseLaw>(hose, from, to, viscosity_Pas);
}

} // namespace pumpwright
