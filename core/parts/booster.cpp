#include "core/parts/gas.h"
#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"
#include "core/units/text.h"

#include <array>
#include <cmath>
#include <numbers>

namespace pumpwright {
namespace {

// The standard values are those of a single 9 inch booster; spring and chambers are near those that PATH
// report UCB-ITS-PRR-97-21 (1997) gives for a test car (value from memory of that report).
constexpr std::array kParameters{
    ParameterSpec{"diaphragmArea_m2", words("Diaphragm area"), QuantityKind::Area, 0.041, 0.005, 0.2, 0.02},
    ParameterSpec{"vacuumVolume_m3", words("Vacuum chamber at rest"), QuantityKind::Volume, 3.6e-3, 2e-4,
                  0.03, 0.05},
    ParameterSpec{"workingVolume_m3", words("Working chamber at rest"), QuantityKind::Volume, 5e-4, 5e-5,
                  0.01},
    ParameterSpec{"travelMax_m", words("Longest travel"), QuantityKind::Length, 0.03, 0.005, 0.1},
    ParameterSpec{"fullTravelForce_N", words("Output force that asks for full travel"), QuantityKind::Force,
                  4000, 500, 30000},
    ParameterSpec{"boostRatio", words("Boost ratio"), QuantityKind::Number, 5, 1.5, 15, 0.05},
    ParameterSpec{"pedalRatio", words("Pedal ratio"), QuantityKind::Number, 4, 1, 10},
    ParameterSpec{"cutIn_N", words("Rod force at which assist sets in"), QuantityKind::Force, 20, 1, 200},
    ParameterSpec{"springForce_N", words("Return spring at rest"), QuantityKind::Force, 100, 0, 500, 0.1},
    ParameterSpec{"springRate_Npm", words("Return spring rate"), QuantityKind::Stiffness, 2400, 0, 20000},
    ParameterSpec{"valveHole_m", words("Equivalent hole of an open valve"), QuantityKind::Length, 9e-3, 1e-3,
                  0.03, 0.1},
    ParameterSpec{"leakHole_m", words("Equivalent hole of all leaks"), QuantityKind::Length, 4e-5, 1e-7, 5e-3,
                  0.5},
    ParameterSpec{"wallTimeConstant_s", words("Walls bring gas back to ambient temperature in"),
                  QuantityKind::Time, 3, 0.05, 600},
    ParameterSpec{"efficiency", words("Efficiency of booster and master cylinder"), QuantityKind::Share, 0.95,
                  0.3, 1, 0.03},
    ParameterSpec{"masterCylinderBore_m", words("Master cylinder bore"), QuantityKind::Length, 0.0222, 0.01,
                  0.06},
    ParameterSpec{"vehicleMass_kg", words("Vehicle mass, kg"), QuantityKind::Number, 1600, 200, 20000},
    ParameterSpec{"brakeGain_m2", words("Braking force per line pressure"), QuantityKind::Area, 1.8e-3, 1e-4,
                  0.05},
    ParameterSpec{"roadGrip_mps2", words("Deceleration that the road allows"), QuantityKind::Acceleration, 9,
                  0.5, 15},
};

/// [s] The diaphragm follows the force with this lag [common practice, no published source].
constexpr double kTravelLag_s = 0.03;
/// [N] of assist, missing or too much, that opens a valve half, unless the cut-in asks for a finer valve
/// [common practice, no published source].
constexpr double kValveBand_N = 40;
/// [N] over which the spring gives way, and over which air locked in begins to resist.
constexpr double kAssistOnset_N = 10;
/// [N] The share of the asked assist says nothing while less than this is asked for.
constexpr double kLeastAsked_N = 100;
/// Share of its volume at rest that a chamber keeps however far the diaphragm is said to travel.
constexpr double kLeastVolumeShare = 0.05;

/// 0 while shut, half open at an error of 1. Its slope falls with the error but never vanishes: a solver that
/// overshoots finds back.
Sloped<3> valveOpening(const Sloped<3>& error) {
    constexpr double kOnset = 0.2;
    const Sloped<3> lift = smoothPositive(error, kOnset);
    return lift / (lift + 1);
}

struct BoosterData {
    double area_m2;
    double travelMax_m;
    double fullTravelForce_N;
    double boostRatio;
    double pedalRatio;
    double cutIn_N;
    double springForce_N;
    double springRate_Npm;
    double efficiency;
    double masterCylinderArea_m2;
    double decelerationPerPressure;
    double roadGrip_mps2;
    Orifice valve;
    Orifice leak;
};

/// What the forces depend on: pressure in the vacuum chamber, pressure in the working chamber, travel.
using Forces = Sloped<3>;

/// A diaphragm between a vacuum chamber and a working chamber. A valve that compares the assist with what the
/// rod force asks for lets air into the working chamber, or lets it out to the vacuum chamber.
class BoosterLaw final : public Law {
public:
    BoosterLaw(BoosterData data, GasVolume vacuum, GasVolume working, Unknown travel)
        : m_data(data), m_vacuum(vacuum), m_working(working), m_travel(travel) {}

    void addEquations(const Point& at, Equations& equations) const override {
        const Forces assist = assist_N(at);
        addChambers(at, equations, assist);
        addValves(at, equations, assist);
        const GasSides leak = gasSides(at, {}, m_vacuum.node);
        addGasFlow(equations, leak, orificeFlow(m_data.leak, flowSides(leak)));
    }

    void addAccount(const Point& at, Account& account) const override;

    void addMasses(MassMatrix& masses) const override {
        m_vacuum.addMasses(masses);
        m_working.addMasses(masses);
        masses.add(m_travel, m_travel, 1);
    }

    std::vector<Probe> probes() const override;
    void probeValues(const Point& at, std::span<double> values) const override;

private:
    struct Chamber {
        double volume_m3;
        double perTravel_m2;
    };

    double rodForce_N(const Point& at) const {
        return m_data.pedalRatio * at.surroundings.pedalForce_N(at.time_s);
    }
    /// What the valve is told; below zero at rest, where it holds the vacuum side open.
    double command_N(const Point& at) const {
        return (m_data.boostRatio - 1) * (rodForce_N(at) - m_data.cutIn_N);
    }

    Forces assist_N(const Point& at) const {
        const auto vacuum = Forces::variable(gasState(at, m_vacuum.node).pressure_Pa, 0);
        const auto working = Forces::variable(gasState(at, m_working.node).pressure_Pa, 1);
        const auto travel = Forces::variable(at[m_travel], 2);
        const Forces drawn = (m_data.efficiency * m_data.area_m2) * (working - vacuum);
        return smoothPositive(drawn - m_data.springRate_Npm * travel - m_data.springForce_N, kAssistOnset_N) -
               resistance_N(drawn);
    }

    /// A foot that moves the diaphragm without vacuum presses together the air before it, which pushes back.
    static Forces resistance_N(const Forces& drawn) {
        const Forces pushed = -drawn;
        return pushed.value > 0 ? pushed * pushed / (pushed + kAssistOnset_N) : Forces{};
    }

    /// [m/s] The hydraulics ask for a travel that grows with the output force up to the stop.
    Forces travelRate(const Point& at, const Forces& assist) const {
        const Forces share = (1 / m_data.fullTravelForce_N) * (assist + rodForce_N(at));
        const Forces squared = share * share;
        const Forces asked = m_data.travelMax_m * (share / pow(squared * squared + 1, 0.25));
        return (1 / kTravelLag_s) * (asked - Forces::variable(at[m_travel], 2));
    }

    Chamber chamber(const Point& at, const GasVolume& gas, double direction) const {
        const double volume = gas.volume_m3 + direction * m_data.area_m2 * at[m_travel];
        const double least = kLeastVolumeShare * gas.volume_m3;
        return volume > least ? Chamber{volume, direction * m_data.area_m2} : Chamber{least, 0};
    }

    void addChambers(const Point& at, Equations& equations, const Forces& assist) const {
        const Forces rate = travelRate(at, assist);
        const std::array columns{m_vacuum.node.pressure, m_working.node.pressure, m_travel};
        addRow(equations, m_travel, rate, columns);
        const auto addChamber = [&](const GasVolume& gas, double direction, std::size_t index) {
            const Chamber now = chamber(at, gas, direction);
            gas.addEquations(at, equations, now.volume_m3, m_travel, now.perTravel_m2);
            const auto pressure = Forces::variable(gasState(at, gas.node).pressure_Pa, index);
            addRow(equations, gas.node.energy, (-direction * m_data.area_m2) * (pressure * rate), columns);
        };
        addChamber(m_vacuum, -1, 0);
        addChamber(m_working, 1, 1);
    }

    /// How much assist is missing, of what opens a valve half.
    Forces valveError(const Point& at, const Forces& assist) const {
        const double band = std::min(kValveBand_N, (m_data.boostRatio - 1) * m_data.cutIn_N);
        return (1 / band) * (command_N(at) - assist);
    }

    void addValves(const Point& at, Equations& equations, const Forces& assist) const {
        const Forces error = valveError(at, assist);
        addValve(at, equations, {}, m_working.node, valveOpening(error));
        addValve(at, equations, m_working.node, m_vacuum.node, valveOpening(-error));
    }

    void addValve(const Point& at, Equations& equations, const GasNode& from, const GasNode& to,
                  const Forces& opening) const {
        const GasSides sides = gasSides(at, from, to);
        const MassFlow wideOpen = orificeFlow(m_data.valve, flowSides(sides));
        const MassFlow flow = opening.value * wideOpen;
        addGasFlow(equations, sides, flow);
        addGasFlowSlope(equations, sides, flow, m_vacuum.node.pressure, opening.slopes[0] * wideOpen.value);
        addGasFlowSlope(equations, sides, flow, m_working.node.pressure, opening.slopes[1] * wideOpen.value);
        addGasFlowSlope(equations, sides, flow, m_travel, opening.slopes[2] * wideOpen.value);
    }

    BoosterData m_data;
    GasVolume m_vacuum;
    GasVolume m_working;
    Unknown m_travel;
};

void BoosterLaw::addAccount(const Point& at, Account& account) const {
    const Forces assist = assist_N(at);
    m_vacuum.addAccount(at, account);
    m_working.addAccount(at, account);
    const GasSides leak = gasSides(at, {}, m_vacuum.node);
    addGasFlowAccount(leak, orificeFlow(m_data.leak, flowSides(leak)), account);
    const GasSides air = gasSides(at, {}, m_working.node);
    addGasFlowAccount(
        air, valveOpening(valveError(at, assist)).value * orificeFlow(m_data.valve, flowSides(air)), account);
    // The gas works on the diaphragm, and that on rod and spring.
    account.giveOff(m_data.area_m2 * (air.toState.pressure_Pa - leak.toState.pressure_Pa) *
                    travelRate(at, assist).value);
}

std::vector<Probe> BoosterLaw::probes() const {
    return {{probe::kPedalForce, words("pedal force"), QuantityKind::Force, false, 0.1},
            {probe::kAssist, words("assist"), QuantityKind::Force, false, 1},
            {probe::kAssistAsked, words("assist asked for"), QuantityKind::Force, false, 1},
            {"assistShare", "assist, share of what is asked for", QuantityKind::Share, false, 1e-3},
            {probe::kTravel, words("diaphragm travel"), QuantityKind::Length, false, 1e-5},
            {probe::kLinePressure, words("line pressure"), QuantityKind::PressureDifference, false, 2000},
            {probe::kDeceleration, words("deceleration"), QuantityKind::Acceleration, false, 5e-3},
            {"vacuum working", "vacuum in the working chamber", QuantityKind::GaugeVacuum, false, 20}};
}

void BoosterLaw::probeValues(const Point& at, std::span<double> values) const {
    const double assist = assist_N(at).value;
    const double asked = std::max(0.0, command_N(at));
    const double line_Pa = m_data.efficiency * (rodForce_N(at) + assist) / m_data.masterCylinderArea_m2;
    values[0] = at.surroundings.pedalForce_N(at.time_s);
    values[1] = assist;
    values[2] = asked;
    values[3] = asked > kLeastAsked_N ? std::min(1.0, assist / asked) : 1.0;
    values[4] = at[m_travel];
    values[5] = line_Pa;
    values[6] = std::min(m_data.roadGrip_mps2, m_data.decelerationPerPressure * line_Pa);
    values[7] = at.surroundings.ambientPressure_Pa(at.time_s) - gasState(at, m_working.node).pressure_Pa;
}

class BoosterKind final : public PartKind {
public:
    std::string_view id() const override { return "booster"; }
    std::string_view title() const override { return words("Brake booster with pedal"); }
    DrawerGroup group() const override { return DrawerGroup::Vacuum; }
    std::string_view letter() const override { return "A"; }

    std::vector<TerminalSpec> terminals(const Part&) const override { return {}; }
    std::vector<PortSpec> ports(const Part&) const override {
        return {{"vacuum", {-4, 0}, words("vacuum chamber")}};
    }
    std::span<const ParameterSpec> parameters() const override { return kParameters; }
    Features features(const Part& part) const override {
        Features features;
        features.booster = BoosterFacts{"vacuum",
                                        value(part, "diaphragmArea_m2"),
                                        value(part, "vacuumVolume_m3"),
                                        value(part, "workingVolume_m3"),
                                        value(part, "travelMax_m"),
                                        value(part, "fullTravelForce_N"),
                                        value(part, "boostRatio"),
                                        value(part, "pedalRatio"),
                                        value(part, "cutIn_N"),
                                        value(part, "springForce_N"),
                                        value(part, "springRate_Npm")};
        return features;
    }

    std::vector<Failure> failures(const Part& part) const override {
        return {{"leak-tenfold", "leaks ten times as much", {scaled(part, "leakHole_m", std::sqrt(10.0))}},
                {"diaphragm-torn", "diaphragm torn", {SetsValue{"leakHole_m", 4e-3}}}};
    }

    std::unique_ptr<Law> law(const Part& part, LawContext& context) const override {
        const double vacuumVolume_m3 = value(part, "vacuumVolume_m3");
        const double workingVolume_m3 = value(part, "workingVolume_m3");
        const double wallTime_s = value(part, "wallTimeConstant_s");
        context.setPortVolume("vacuum", vacuumVolume_m3, true);
        const GasNode vacuum = context.gas("vacuum");
        const GasNode working = context.addGas("working chamber", workingVolume_m3, true);
        const Unknown travel = context.addUnknown({"diaphragm travel", 0, 1e-6});
        const Surroundings& around = context.surroundings();
        return std::make_unique<BoosterLaw>(
            data(part), GasVolume::withWall(vacuum, vacuumVolume_m3, wallTime_s, around),
            GasVolume::withWall(working, workingVolume_m3, wallTime_s, around), travel);
    }

private:
    BoosterData data(const Part& part) const {
        const double bore_m = value(part, "masterCylinderBore_m");
        BoosterData data{};
        data.area_m2 = value(part, "diaphragmArea_m2");
        // The diaphragm cannot travel further than its chamber is long.
        data.travelMax_m =
            std::min(value(part, "travelMax_m"),
                     (1 - 2 * kLeastVolumeShare) * value(part, "vacuumVolume_m3") / data.area_m2);
        data.fullTravelForce_N = value(part, "fullTravelForce_N");
        data.boostRatio = value(part, "boostRatio");
        data.pedalRatio = value(part, "pedalRatio");
        data.cutIn_N = value(part, "cutIn_N");
        data.springForce_N = value(part, "springForce_N");
        data.springRate_Npm = value(part, "springRate_Npm");
        data.efficiency = value(part, "efficiency");
        data.masterCylinderArea_m2 = std::numbers::pi / 4 * bore_m * bore_m;
        data.decelerationPerPressure = value(part, "brakeGain_m2") / value(part, "vehicleMass_kg");
        data.roadGrip_mps2 = value(part, "roadGrip_mps2");
        data.valve = Orifice::hole(value(part, "valveHole_m"));
        data.leak = Orifice::hole(value(part, "leakHole_m"));
        return data;
    }
};

} // namespace

const PartKind& boosterKind() {
    static const BoosterKind kind;
    return kind;
}

} // namespace pumpwright
