#include "core/parts/gas.h"
#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"
#include "core/units/text.h"

#include <array>

namespace pumpwright {
namespace {

constexpr std::array kParameters{
    ParameterSpec{"crackingPressure_Pa", words("Opens at a pressure difference of"),
                  QuantityKind::PressureDifference, 2000, 50, 30000, 0.3},
    ParameterSpec{"fullFlowDiameter_m", words("Equivalent hole when open"), QuantityKind::Length, 6e-3, 5e-4,
                  0.03, 0.1},
    ParameterSpec{"backLeakHole_m", words("Equivalent hole when shut"), QuantityKind::Length, 1e-5, 1e-7,
                  0.01, 0.5},
};

/// Inside each end, with the nipple.
constexpr double kEndVolume_m3 = 5e-6;

/// The valve is fully open at this many times its cracking pressure [common practice, no published source].
constexpr double kFullyOpenAt = 1.5;

class CheckValveLaw final : public Law {
public:
    CheckValveLaw(GasVolume booster, GasVolume pump, double crackingPressure_Pa, Orifice open, Orifice leak)
        : m_booster(booster), m_pump(pump), m_crackingPressure_Pa(crackingPressure_Pa), m_open(open),
          m_leak(leak) {}

    void addEquations(const Point& at, Equations& equations) const override {
        m_booster.addEquations(at, equations);
        m_pump.addEquations(at, equations);
        const GasSides sides = gasSides(at, m_booster.node, m_pump.node);
        addGasFlow(equations, sides, flow(sides));
    }
    void addMasses(MassMatrix& masses) const override {
        m_booster.addMasses(masses);
        m_pump.addMasses(masses);
    }
    void addAccount(const Point& at, Account& account) const override {
        m_booster.addAccount(at, account);
        m_pump.addAccount(at, account);
    }

    std::vector<Probe> probes() const override {
        return {{probe::kFlow, words("air flow"), QuantityKind::Number, false, 1e-7}};
    }
    void probeValues(const Point& at, std::span<double> values) const override {
        values[0] = flow(gasSides(at, m_booster.node, m_pump.node)).value;
    }

private:
    MassFlow flow(const GasSides& sides) const {
        const FlowSides drive = flowSides(sides);
        const double over_Pa = drive.fromPressure_Pa - drive.toPressure_Pa - m_crackingPressure_Pa;
        const Sloped<1> opening =
            smoothStep((1 / ((kFullyOpenAt - 1) * m_crackingPressure_Pa)) * Sloped<1>::variable(over_Pa, 0));
        const MassFlow wideOpen = orificeFlow(m_open, drive);
        MassFlow flow = opening.value * wideOpen + orificeFlow(m_leak, drive);
        flow.slopes[0] += opening.slopes[0] * wideOpen.value;
        flow.slopes[2] -= opening.slopes[0] * wideOpen.value;
        return flow;
    }

    GasVolume m_booster;
    GasVolume m_pump;
    double m_crackingPressure_Pa;
    Orifice m_open;
    Orifice m_leak;
};

class CheckValveKind final : public PartKind {
public:
    std::string_view id() const override { return "check-valve"; }
    std::string_view title() const override { return words("Vacuum check valve"); }
    DrawerGroup group() const override { return DrawerGroup::Vacuum; }
    std::string_view letter() const override { return "R"; }

    std::vector<TerminalSpec> terminals(const Part&) const override { return {}; }
    std::vector<PortSpec> ports(const Part&) const override {
        return {{"booster", {-2, 0}, words("to the booster: air comes from here")},
                {"pump", {2, 0}, words("to the pump: air leaves here")}};
    }
    std::span<const ParameterSpec> parameters() const override { return kParameters; }
    Features features(const Part&) const override {
        Features features;
        features.airWays = {{"booster", "pump", true}};
        return features;
    }

    std::vector<Failure> failures(const Part& part) const override {
        return {{"valve-leaks",
                 "does not hold back",
                 {SetsValue{"backLeakHole_m", value(part, "fullFlowDiameter_m")}}},
                {"valve-stuck",
                 "stuck shut",
                 {SetsValue{"crackingPressure_Pa", 3e4}, SetsValue{"fullFlowDiameter_m", 5e-4}}}};
    }

    std::unique_ptr<Law> law(const Part& part, LawContext& context) const override {
        // The pump side has leaked down while the vehicle stood.
        context.setPortVolume("booster", kEndVolume_m3, true);
        context.setPortVolume("pump", kEndVolume_m3, false);
        const auto end = [&](std::string_view port) {
            return GasVolume::withWall(context.gas(port), kEndVolume_m3, kFittingWallTime_s,
                                       context.surroundings());
        };
        return std::make_unique<CheckValveLaw>(
            end("booster"), end("pump"), value(part, "crackingPressure_Pa"),
            Orifice::hole(value(part, "fullFlowDiameter_m")), Orifice::hole(value(part, "backLeakHole_m")));
    }
};

} // namespace

const PartKind& checkValveKind() {
    static const CheckValveKind kind;
    return kind;
}

} // namespace pumpwright
