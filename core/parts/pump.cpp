#include "core/parts/gas.h"
#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"
#include "core/units/text.h"

#include <array>
#include <optional>

namespace pumpwright {
namespace {

// The standard values are those of a small vane pump that draws 12 A at standstill from 12 V, about 5.5 A at
// 60 kPa of vacuum, and brings 4 L from 100 to 30 kPa in about 10 s [common practice, no published source].
constexpr std::array kParameters{
    ParameterSpec{"resistance_ohm", words("Motor: armature and brushes"), QuantityKind::Resistance, 1.0, 0.01,
                  100, 0.1},
    ParameterSpec{"inductance_H", words("Motor: armature"), QuantityKind::Inductance, 0.5e-3, 1e-5, 0.1},
    ParameterSpec{"motorConstant_Vs", words("Motor constant"), QuantityKind::MotorConstant, 0.025, 1e-3, 1,
                  0.05},
    ParameterSpec{"inertia_kgm2", words("Rotor and vanes"), QuantityKind::Inertia, 4e-5, 1e-7, 0.01},
    ParameterSpec{"frictionTorque_Nm", words("Friction"), QuantityKind::Torque, 0.025, 0, 10, 0.3},
    ParameterSpec{"viscous_Nms", words("Friction that grows with speed, N·m·s"), QuantityKind::Number, 5e-5,
                  0, 0.1},
    ParameterSpec{"freeSpeed_m3ps", words("Volume flow at rated speed"), QuantityKind::VolumeFlow, 6e-4, 1e-6,
                  0.05, 0.1},
    ParameterSpec{"ratedSpeed_radps", words("Rated speed"), QuantityKind::AngularSpeed, 260, 10, 3000},
    ParameterSpec{"ultimatePressureShare", words("Lowest pressure, share of ambient"), QuantityKind::Share,
                  0.14, 0.001, 0.9, 0.1},
    ParameterSpec{"inletVolume_m3", words("Volume at the inlet"), QuantityKind::Volume, 20e-6, 2e-6, 1e-3},
    ParameterSpec{"backLeakHole_m", words("Equivalent hole at standstill"), QuantityKind::Length, 5e-4, 1e-6,
                  0.01, 0.3},
    ParameterSpec{"pulsationShare", words("Pulsation of the flow"), QuantityKind::Share, 0, 0, 1},
    ParameterSpec{"runningCurrent_A", words("Running current, stated"), QuantityKind::Current, 5.5, 0.01,
                  500},
    ParameterSpec{"inrushCurrent_A", words("Inrush current, stated"), QuantityKind::Current, 12, 0.01, 1000},
    ParameterSpec{"minimumVoltage_V", words("Works down to"), QuantityKind::Voltage, 9, 1, 60},
    ParameterSpec{"ultimateTolerance_share", words("Lowest pressure may be worse by"), QuantityKind::Share,
                  0.05, 0, 0.5},
    ParameterSpec{"duty_share", words("Rated duty, of ten minutes"), QuantityKind::Share, 0.5, 0.01, 1},
    ParameterSpec{"startsPerHour", words("Starts in an hour"), QuantityKind::Number, 120, 1, 10000},
};

/// Loss of the motor's iron, beside its terminals: what ends the swing of a motor that is cut off, which the
/// little capacitance of the open contact would keep up [common practice, no published source].
constexpr double kIronLoss_S = 1e-3;
/// [rad/s] over which friction turns round with the direction of rotation.
constexpr double kFrictionOnset_radps = 1;
/// [rad/s] below which the vanes no longer seal and air leaks back.
constexpr double kSealingSpeed_radps = 20;
/// [Pa] over which the flow sets in above the lowest pressure.
constexpr double kFlowOnset_Pa = 200;
/// Strokes of the flow in one turn: four vanes.
constexpr double kPulsesPerTurn = 4;
/// How fast, per radian, cosine and sine of the angle return to the unit circle after rounding.
constexpr double kCircleGain = 0.5;

struct Motor {
    double resistance_ohm;
    double inductance_H;
    double constant_Vs;
    double inertia_kgm2;
    double friction_Nm;
    double viscous_Nms;
};

struct Vanes {
    double displacement_m3; ///< per radian
    double ultimateShare;
    Orifice backLeak;
    double pulsationShare;
};

/// Unknowns of the motor and the pulse; the angle is kept as cosine and sine, which stay bounded.
struct Shaft {
    Unknown plus;
    Unknown minus;
    Unknown current;
    Unknown speed;
    Unknown cosine = kReference;
    Unknown sine = kReference;
};

/// V = R·i + L·di/dt + Ke·ω and J·dω/dt = Kt·i − friction − compression torque; the pump takes
/// S = displacement·ω·max(0, 1 − pu/p) from its inlet and gives it to the atmosphere.
class PumpLaw final : public Law {
public:
    PumpLaw(Motor motor, Vanes vanes, Shaft shaft, GasVolume inlet)
        : m_motor(motor), m_vanes(vanes), m_shaft(shaft), m_inlet(inlet) {}

    void addEquations(const Point& at, Equations& equations) const override {
        m_inlet.addEquations(at, equations);
        addArmature(at, equations);
        addTorques(at, equations);
        addFlow(at, equations);
        if (m_vanes.pulsationShare > 0) {
            addPulse(at, equations);
        }
    }

    void addMasses(MassMatrix& masses) const override {
        m_inlet.addMasses(masses);
        masses.add(m_shaft.current, m_shaft.current, m_motor.inductance_H);
        masses.add(m_shaft.speed, m_shaft.speed, m_motor.inertia_kgm2);
        if (m_vanes.pulsationShare > 0) {
            masses.add(m_shaft.cosine, m_shaft.cosine, 1);
            masses.add(m_shaft.sine, m_shaft.sine, 1);
        }
    }

    void addAccount(const Point& at, Account& account) const override {
        const GasSides sides = gasSides(at, m_inlet.node, {});
        const Flows flows = flowsAt(at, sides);
        m_inlet.addAccount(at, account);
        addGasFlowAccount(sides, flows.pumped, account);
        addGasFlowAccount(sides, flows.backLeak, account);
        const double voltage_V = at[m_shaft.plus] - at[m_shaft.minus];
        const double current_A = at[m_shaft.current];
        const double speed_radps = at[m_shaft.speed];
        account.giveOff(kIronLoss_S * voltage_V * voltage_V + m_motor.resistance_ohm * current_A * current_A);
        account.giveOff(loadTorque_Nm(at).value * speed_radps); // friction, and what compresses the air
        account.held_J += 0.5 * m_motor.inductance_H * current_A * current_A +
                          0.5 * m_motor.inertia_kgm2 * speed_radps * speed_radps;
    }

    std::vector<Probe> probes() const override {
        return {{probe::kCurrent, words("motor current"), QuantityKind::Current, false, 5e-3},
                {probe::kSpeed, words("speed"), QuantityKind::AngularSpeed, false, 0.2},
                {probe::kFlow, words("air flow"), QuantityKind::Number, false, 1e-7}};
    }
    void probeValues(const Point& at, std::span<double> values) const override {
        const GasSides sides = gasSides(at, m_inlet.node, {});
        const Flows flows = flowsAt(at, sides);
        values[0] = at[m_shaft.current];
        values[1] = at[m_shaft.speed];
        values[2] = flows.pumped.value + flows.backLeak.value;
    }

private:
    /// Both from the inlet to the atmosphere, with their slopes towards speed and pulse.
    struct Flows {
        MassFlow pumped;
        double pumpedPerSpeed;
        double pumpedPerPulse;
        MassFlow backLeak;
        double backLeakPerSpeed;
    };

    void addArmature(const Point& at, Equations& equations) const {
        const Shaft& s = m_shaft;
        equations.addConductance(at, s.plus, s.minus, kIronLoss_S);
        equations.addCurrent(s.plus, s.minus, at[s.current]);
        equations.addCurrentSlope(s.plus, s.minus, s.current, 1);
        equations.add(s.current, at[s.plus] - at[s.minus] - m_motor.resistance_ohm * at[s.current] -
                                     m_motor.constant_Vs * at[s.speed]);
        equations.addSlope(s.current, s.plus, 1);
        equations.addSlope(s.current, s.minus, -1);
        equations.addSlope(s.current, s.current, -m_motor.resistance_ohm);
        equations.addSlope(s.current, s.speed, -m_motor.constant_Vs);
    }

    void addTorques(const Point& at, Equations& equations) const {
        const Unknown speed = m_shaft.speed;
        const Sloped<2> load = loadTorque_Nm(at);
        equations.add(speed, m_motor.constant_Vs * at[m_shaft.current] - load.value);
        equations.addSlope(speed, m_shaft.current, m_motor.constant_Vs);
        equations.addSlope(speed, speed, -load.slopes[0]);
        equations.addSlope(speed, m_inlet.node.pressure, -load.slopes[1]);
    }

    /// Friction, and the torque of a machine that compresses its displacement from inlet to ambient pressure
    /// without heat loss, p·γ/(γ−1)·((pa/p)^((γ−1)/γ) − 1) [compressor textbooks]. Towards speed and
    /// pressure.
    Sloped<2> loadTorque_Nm(const Point& at) const {
        constexpr double kExponent = (kAirHeatRatio - 1) / kAirHeatRatio;
        const auto speed = Sloped<2>::variable(at[m_shaft.speed], 0);
        const auto pressure = Sloped<2>::variable(gasState(at, m_inlet.node).pressure_Pa, 1);
        const double ambient_Pa = at.surroundings.ambientPressure_Pa(at.time_s);
        const Sloped<2> compression =
            (m_vanes.displacement_m3 / kExponent) * (pressure * (pow(ambient_Pa / pressure, kExponent) - 1));
        const Sloped<2> direction = tanh((1 / kFrictionOnset_radps) * speed);
        return direction * (compression + m_motor.friction_Nm) + m_motor.viscous_Nms * speed;
    }

    void addFlow(const Point& at, Equations& equations) const {
        const GasSides sides = gasSides(at, m_inlet.node, {});
        const Flows flows = flowsAt(at, sides);
        addGasFlow(equations, sides, flows.pumped);
        addGasFlowSlope(equations, sides, flows.pumped, m_shaft.speed, flows.pumpedPerSpeed);
        if (m_vanes.pulsationShare > 0) {
            addGasFlowSlope(equations, sides, flows.pumped, m_shaft.sine, flows.pumpedPerPulse);
        }
        addGasFlow(equations, sides, flows.backLeak);
        addGasFlowSlope(equations, sides, flows.backLeak, m_shaft.speed, flows.backLeakPerSpeed);
    }

    Flows flowsAt(const Point& at, const GasSides& sides) const {
        const FlowSides drive = flowSides(sides);
        const auto speed = Sloped<1>::variable(at[m_shaft.speed], 0);
        const Sloped<1> turning = smoothPositive(speed, kFrictionOnset_radps);
        const double pulse = 1 + m_vanes.pulsationShare * at[m_shaft.sine];
        // S·p/(R·T) for each m³/s that the vanes sweep.
        const double above_Pa = drive.fromPressure_Pa - m_vanes.ultimateShare * drive.toPressure_Pa;
        const Sloped<1> density = (1 / (kAirGasConstant_JPerKgK * drive.fromTemperature_K)) *
                                  smoothPositive(Sloped<1>::variable(above_Pa, 0), kFlowOnset_Pa);
        const MassFlow perSweep{density.value,
                                {density.slopes[0], -density.value / drive.fromTemperature_K, 0, 0}};
        const double displaced = m_vanes.displacement_m3 * perSweep.value;

        const Sloped<1> open =
            1.0 / ((1 / (kSealingSpeed_radps * kSealingSpeed_radps)) * (speed * speed) + 1);
        const MassFlow leak = orificeFlow(m_vanes.backLeak, drive);
        return {m_vanes.displacement_m3 * turning.value * pulse * perSweep,
                displaced * pulse * turning.slopes[0], displaced * turning.value * m_vanes.pulsationShare,
                open.value * leak, open.slopes[0] * leak.value};
    }

    /// Cosine and sine of the pulse's angle: they turn with the shaft and are drawn to the unit circle.
    void addPulse(const Point& at, Equations& equations) const {
        using Turn = Sloped<3>;
        const auto speed = Turn::variable(at[m_shaft.speed], 0);
        const auto cosine = Turn::variable(at[m_shaft.cosine], 1);
        const auto sine = Turn::variable(at[m_shaft.sine], 2);
        const Turn rate = kPulsesPerTurn * speed;
        const Turn draw = kCircleGain * sqrt(rate * rate + 1) * (1.0 - cosine * cosine - sine * sine);
        const std::array columns{m_shaft.speed, m_shaft.cosine, m_shaft.sine};
        addRow(equations, m_shaft.cosine, draw * cosine - rate * sine, columns);
        addRow(equations, m_shaft.sine, draw * sine + rate * cosine, columns);
    }

    Motor m_motor;
    Vanes m_vanes;
    Shaft m_shaft;
    GasVolume m_inlet;
};

class PumpKind final : public PartKind {
public:
    std::string_view id() const override { return "pump"; }
    std::string_view title() const override { return words("Vacuum pump"); }
    DrawerGroup group() const override { return DrawerGroup::Vacuum; }
    std::string_view letter() const override { return "M"; }

    std::vector<TerminalSpec> terminals(const Part&) const override {
        return {{"+", {0, -3}, words("motor, plus")}, {"-", {0, 3}, words("motor, minus")}};
    }
    std::vector<PortSpec> ports(const Part&) const override { return {{"inlet", {-3, 0}, words("vacuum")}}; }
    std::span<const ParameterSpec> parameters() const override { return kParameters; }

    Features features(const Part& part) const override {
        Features features;
        features.paths = {{"+", "-"}};
        features.loads = {{"+", "-", LoadSort::Motor, value(part, "runningCurrent_A"),
                           value(part, "inrushCurrent_A"), value(part, "minimumVoltage_V")}};
        features.pump =
            PumpRating{"inlet", value(part, "ultimatePressureShare"), value(part, "ultimateTolerance_share"),
                       value(part, "duty_share"), value(part, "startsPerHour")};
        return features;
    }

    std::vector<Failure> failures(const Part& part) const override {
        std::vector<Failure> all = PartKind::failures(part);
        all.push_back({"pump-worn",
                       "vanes worn: half the flow, and half the vacuum is out of reach",
                       {scaled(part, "freeSpeed_m3ps", 0.5), SetsValue{"ultimatePressureShare", 0.55}}});
        all.push_back({"pump-seized",
                       "seized: draws its standstill current",
                       {scaled(part, "frictionTorque_Nm", 1e3)}});
        return all;
    }

    std::unique_ptr<Law> law(const Part& part, LawContext& context) const override {
        const double inletVolume_m3 = value(part, "inletVolume_m3");
        context.setPortVolume("inlet", inletVolume_m3, false);
        const GasVolume inlet = GasVolume::withWall(context.gas("inlet"), inletVolume_m3, kFittingWallTime_s,
                                                    context.surroundings());
        const Vanes vanes{value(part, "freeSpeed_m3ps") / value(part, "ratedSpeed_radps"),
                          value(part, "ultimatePressureShare"), Orifice::hole(value(part, "backLeakHole_m")),
                          value(part, "pulsationShare")};
        Shaft shaft{context.node("+"), context.node("-"), context.addUnknown({"motor current", 0, 1e-3}),
                    context.addUnknown({"motor speed", 0, 1e-2})};
        if (vanes.pulsationShare > 0) {
            shaft.cosine = context.addUnknown({"cosine of the pulse", 1, 1e-3});
            shaft.sine = context.addUnknown({"sine of the pulse", 0, 1e-3});
        }
        return std::make_unique<PumpLaw>(motor(part), vanes, shaft, inlet);
    }

private:
    Motor motor(const Part& part) const {
        return {value(part, "resistance_ohm"),    value(part, "inductance_H"),
                value(part, "motorConstant_Vs"),  value(part, "inertia_kgm2"),
                value(part, "frictionTorque_Nm"), value(part, "viscous_Nms")};
    }
};

} // namespace

const PartKind& pumpKind() {
    static const PumpKind kind;
    return kind;
}

} // namespace pumpwright
