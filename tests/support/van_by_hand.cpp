#include "tests/support/van_by_hand.h"

#include "tests/support/cvode_peer.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace pumpwright::test {
namespace {

constexpr double kPi = 3.14159265358979323846;
constexpr double kAmbient_Pa = 101325;
constexpr double kAmbient_K = 293.15;
constexpr double kGas = 287.05287;
constexpr double kHeatVolume = kGas / 0.4;
constexpr double kHeatPressure = 1.4 * kHeatVolume;

constexpr double kEmpty_ohm = 0.008; ///< of the battery
constexpr double kContact_ohm = 0.005;
constexpr double kSwitch_ohm = 0.01;      ///< vacuum switch
constexpr double kPedalSwitch_ohm = 0.02; ///< brake-lamp switch
constexpr double kCoil_ohm = 90;
constexpr double kCoil_H = 0.7;
constexpr double kPullIn_A = 7.2 / kCoil_ohm;
constexpr double kDropOut_A = 1.6 / kCoil_ohm;
constexpr double kOperate_s = 0.004;
constexpr double kRelease_s = 0.0015;
constexpr double kLamp_W = 21;

/// Where each quantity stands in y. A gas has its mass and, after it, its energy.
enum Index : std::size_t {
    Current,
    Speed,
    Coil,
    Charge,
    Travel,
    Filament, ///< both lamps alike
    Inlet,
    PumpEnd = Inlet + 2,
    BoosterEnd = PumpEnd + 2,
    Tee = BoosterEnd + 2,
    Sensor = Tee + 2,
    Vacuum = Sensor + 2,
    Working = Vacuum + 2,
    Count = Working + 2
};

constexpr double kVacuum_m3 = 3.6e-3;
constexpr double kWorking_m3 = 5e-4;
constexpr double kDiaphragm_m2 = 0.041;

struct Gas {
    double pressure_Pa;
    double temperature_K;
};
constexpr Gas kAir{kAmbient_Pa, kAmbient_K};

double positive(double x, double blend) {
    const double s = std::clamp(x / blend, 0.0, 1.0);
    return x >= blend ? x : blend * s * s * (2 - s);
}

/// Through a hole, choked or not, with a straight line through the smallest differences [ISO 6358]. kg/s.
double holeFlow(double diameter_m, const Gas& a, const Gas& b) {
    const bool forward = a.pressure_Pa >= b.pressure_Pa;
    const Gas& from = forward ? a : b;
    const Gas& to = forward ? b : a;
    const double choked = kPi / 4 * diameter_m * diameter_m * std::sqrt(1.4 / kGas) * std::pow(1 / 1.2, 3.0) *
                          from.pressure_Pa / std::sqrt(from.temperature_K);
    const double u = std::min((1 - to.pressure_Pa / from.pressure_Pa) / (1 - 0.528), 1.0);
    const double square = u * (2 - u);
    const double share = u < 1 ? square * std::sqrt(1.001 / (square + 1e-3)) : 1;
    return (forward ? 1 : -1) * choked * share;
}

/// Laminar flow in a hose [Hagen-Poiseuille], limited by its bore.
double hoseFlow(double diameter_m, double length_m, const Gas& a, const Gas& b) {
    const double bore = holeFlow(diameter_m, a, b);
    if (bore == 0) {
        return 0;
    }
    const double viscosity = 1.458e-6 * std::pow(kAmbient_K, 1.5) / (kAmbient_K + 110.4); // [ISO 2533]
    const double source_K = bore > 0 ? a.temperature_K : b.temperature_K;
    const double friction = kPi * std::pow(diameter_m, 4) / (256 * viscosity * length_m * kGas * source_K) *
                            (a.pressure_Pa * a.pressure_Pa - b.pressure_Pa * b.pressure_Pa);
    return friction / std::sqrt(1 + std::pow(friction / bore, 2));
}

double checkValveFlow(const Gas& booster, const Gas& pump) {
    const double s = std::clamp((booster.pressure_Pa - pump.pressure_Pa - 2000) / 1000, 0.0, 1.0);
    return s * s * (3 - 2 * s) * holeFlow(6e-3, booster, pump) + holeFlow(1e-5, booster, pump);
}

/// What a rectifier of 0.95 V at 1 A, of which its resistance takes 0.05 V, drops.
double builtInDiode_V(double current_A) {
    const double slope_V = 2 * 0.02585;
    const double saturation_A = 1 / std::expm1(0.9 / slope_V);
    return slope_V * std::log1p(std::max(current_A, -0.5 * saturation_A) / saturation_A) + 0.05 * current_A;
}

/// What a rectifier of 0.9 V at 3 A drops, of which 0.02 Ω take 0.06 V.
double lampDiode_V(double current_A) {
    const double junction_V = 0.9 - 0.06;
    const double slope_V = 0.02585 * std::min(junction_V / 0.45, 2.0);
    const double saturation_A = 3 / std::expm1(junction_V / slope_V);
    return slope_V * std::log1p(std::max(current_A, -0.5 * saturation_A) / saturation_A) + 0.02 * current_A;
}

/// [A] of a coil's current that closes its circle over lamps and diode rather than over the built-in diode:
/// both ways take the same voltage.
double overLamps_A(double coil_A, double lamps_ohm) {
    double low = 0;
    double high = std::max(coil_A, 0.0);
    for (int i = 0; i < 60; ++i) {
        const double middle = 0.5 * (low + high);
        const bool more = builtInDiode_V(coil_A - middle) > lampDiode_V(middle) + lamps_ohm * middle;
        (more ? low : high) = middle;
    }
    return low;
}

double openCircuit_V(double charge) {
    constexpr std::array kTable{11.89, 12.06, 12.24, 12.45, 12.65};
    const auto section = std::min(static_cast<std::size_t>(charge / 0.25), std::size_t{3});
    return kTable[section] +
           (kTable[section + 1] - kTable[section]) * (charge / 0.25 - static_cast<double>(section));
}

double filament_S(double temperature_K) {
    const double hot_ohm = 12.0 * 12.0 / kLamp_W;
    return std::pow(temperature_K / 2500, -1.2) / hot_ohm;
}

/// What switches stand as, and what the pedal does.
struct State {
    const VanByHand& van;
    bool triggered = false; ///< vacuum or pedal switch closed
    bool contact = false;   ///< relay
    int moving = 0;         ///< of the armature: 1 in, −1 out
    bool in = false;
    double arrives_s = std::numeric_limits<double>::infinity();

    double pedal_N(double t) const {
        double force = 0;
        for (const Press& press : van.presses) {
            const double up = std::clamp((t - press.at_s) / press.rise_s, 0.0, 1.0);
            const double down = std::clamp((t - press.at_s - press.hold_s) / press.rise_s, 0.0, 1.0);
            force = std::max(force, press.force_N * (up - down));
        }
        return force;
    }
};

Gas gasAt(std::span<const double> y, std::size_t index, double volume_m3) {
    return {0.4 * y[index + 1] / volume_m3, y[index + 1] / (y[index] * kHeatVolume)};
}

struct Voltages {
    double supply_V;
    double coil_V;
    double lamp_V;
    double motor_V;
};

/// Battery and its ground feed a splice. From there over the relay to the motor and its ground, and over the
/// trigger to the coil and its ground, or to a second splice with the lamps and the diode to the coil.
Voltages voltages(const State& state, std::span<const double> y) {
    constexpr double kGround_ohm = 0.002;
    constexpr double kWire = VanByHand::kWire_ohm;
    // battery, its ground wire and ground, and the wire to the splice
    constexpr double kCommon_ohm = kEmpty_ohm + 2 * kWire + kGround_ohm;
    const bool lamps = state.van.trigger == VanByHand::Trigger::BrakeLamps;
    const double motor_A = y[Current];
    const double coil_A = state.triggered ? y[Coil] : 0;
    // lamps, each over its own wires and ground
    const double lampShare_S = 1 / (1 / filament_S(y[Filament]) + 2 * kWire + kGround_ohm);
    const double lamps_S = lamps && state.triggered ? 2 * lampShare_S : 0;
    const double feed_ohm = (lamps ? kPedalSwitch_ohm : kSwitch_ohm) + 2 * kWire;
    // node after the trigger: u = (supply − feed·coil)/(1 + feed·lamps); the iron's loss beside the motor is
    // small
    const double motorFeed_ohm = kContact_ohm + 3 * kWire + kGround_ohm;
    const double iron_S = state.contact ? 1e-3 / (1 + 1e-3 * motorFeed_ohm) : 0;
    const double drawn_A = (state.contact ? motor_A * (1 - iron_S * motorFeed_ohm) : 0) + coil_A;
    const double perVolt_S = iron_S + lamps_S / (1 + feed_ohm * lamps_S);
    const double fed_A = drawn_A - lamps_S * feed_ohm * coil_A / (1 + feed_ohm * lamps_S);
    const double supply_V = (openCircuit_V(y[Charge]) - kCommon_ohm * fed_A) / (1 + kCommon_ohm * perVolt_S);

    Voltages at{};
    at.supply_V = supply_V;
    const double node_V = (supply_V - feed_ohm * coil_A) / (1 + feed_ohm * lamps_S);
    if (lamps && state.triggered) {
        at.lamp_V = node_V * lampShare_S / filament_S(y[Filament]);
    }
    const double coilWires_ohm = (lamps ? 3 : 1) * kWire + kGround_ohm;
    if (state.triggered) {
        at.coil_V = node_V - coilWires_ohm * coil_A - (lamps ? lampDiode_V(coil_A) : 0);
    } else if (lamps) {
        const double back_A = overLamps_A(y[Coil], 1 / (2 * lampShare_S) + coilWires_ohm);
        at.coil_V = -builtInDiode_V(y[Coil] - back_A);
        at.lamp_V = 0.5 * back_A / filament_S(y[Filament]);
    } else {
        at.coil_V = -builtInDiode_V(y[Coil]);
    }
    if (state.contact) {
        at.motor_V = (supply_V - motorFeed_ohm * motor_A) / (1 + 1e-3 * motorFeed_ohm);
    } else {
        // through the iron's loss, or over the gap that breaks down at 330 V
        const double free_V = -1e3 * motor_A;
        at.motor_V = std::max(free_V, (supply_V - 330 - motor_A) / 1.001);
    }
    return at;
}

/// Adds a flow with its enthalpy; `from` or `to` beyond Count stands for the atmosphere.
void addFlow(double flow, std::size_t from, const Gas& source, std::size_t to, const Gas& sink,
             std::span<double> f) {
    const double power = kHeatPressure * (flow >= 0 ? source.temperature_K : sink.temperature_K) * flow;
    if (from < Count) {
        f[from] -= flow;
        f[from + 1] -= power;
    }
    if (to < Count) {
        f[to] += flow;
        f[to + 1] += power;
    }
}

void addWall(double volume_m3, double time_s, std::size_t index, const Gas& gas, std::span<double> f) {
    const double full = kAmbient_Pa * volume_m3 / (kGas * kAmbient_K);
    f[index + 1] += full * kHeatVolume / time_s * (kAmbient_K - gas.temperature_K);
}

void vacuumRight(const State& state, double t, std::span<const double> y, std::span<double> f) {
    const double x = y[Travel];
    const Gas vacuum = gasAt(y, Vacuum, kVacuum_m3 - kDiaphragm_m2 * x);
    const Gas working = gasAt(y, Working, kWorking_m3 + kDiaphragm_m2 * x);
    const Gas inlet = gasAt(y, Inlet, 20e-6);
    const Gas pumpEnd = gasAt(y, PumpEnd, 5e-6);
    const Gas boosterEnd = gasAt(y, BoosterEnd, 5e-6);
    const Gas tee = gasAt(y, Tee, 5e-6);
    const Gas sensor = gasAt(y, Sensor, 2e-6);

    addWall(kVacuum_m3, 3, Vacuum, vacuum, f);
    addWall(kWorking_m3, 3, Working, working, f);
    addWall(20e-6, 0.05, Inlet, inlet, f);
    addWall(5e-6, 0.05, PumpEnd, pumpEnd, f);
    addWall(5e-6, 0.05, BoosterEnd, boosterEnd, f);
    addWall(5e-6, 0.05, Tee, tee, f);
    addWall(2e-6, 0.05, Sensor, sensor, f);

    addFlow(hoseFlow(9e-3, 0.5, vacuum, tee), Vacuum, vacuum, Tee, tee, f);
    addFlow(hoseFlow(4e-3, 0.3, tee, sensor), Tee, tee, Sensor, sensor, f);
    addFlow(hoseFlow(9e-3, 0.5, tee, boosterEnd), Tee, tee, BoosterEnd, boosterEnd, f);
    addFlow(checkValveFlow(boosterEnd, pumpEnd), BoosterEnd, boosterEnd, PumpEnd, pumpEnd, f);
    addFlow(hoseFlow(9e-3, 0.8, pumpEnd, inlet), PumpEnd, pumpEnd, Inlet, inlet, f);

    const double swept = 6e-4 / 260 * positive(y[Speed], 1);
    addFlow(swept * positive(inlet.pressure_Pa - 0.14 * kAmbient_Pa, 200) / (kGas * inlet.temperature_K),
            Inlet, inlet, Count, kAir, f);
    addFlow(holeFlow(5e-4, inlet, kAir) / (1 + y[Speed] * y[Speed] / 400), Inlet, inlet, Count, kAir, f);

    const double rod_N = 4 * state.pedal_N(t);
    const double drawn_N = 0.95 * kDiaphragm_m2 * (working.pressure_Pa - vacuum.pressure_Pa);
    double assist_N = positive(drawn_N - 2400 * x - 100, 10);
    assist_N -= drawn_N < 0 ? drawn_N * drawn_N / (10 - drawn_N) : 0;
    const double error = (4 * (rod_N - 20) - assist_N) / 40;
    const auto opening = [](double e) {
        const double lift = positive(e, 0.2);
        return lift / (lift + 1);
    };
    addFlow(opening(error) * holeFlow(9e-3, kAir, working), Count, kAir, Working, working, f);
    addFlow(opening(-error) * holeFlow(9e-3, working, vacuum), Working, working, Vacuum, vacuum, f);
    addFlow(holeFlow(state.van.leakHole_m, kAir, vacuum), Count, kAir, Vacuum, vacuum, f);

    const double share = (assist_N + rod_N) / 4000;
    f[Travel] = (0.03 * share / std::pow(std::pow(share, 4) + 1, 0.25) - x) / 0.03;
    f[Vacuum + 1] += kDiaphragm_m2 * vacuum.pressure_Pa * f[Travel];
    f[Working + 1] -= kDiaphragm_m2 * working.pressure_Pa * f[Travel];
}

void right(const State& state, double t, std::span<const double> y, std::span<double> f) {
    std::fill(f.begin(), f.end(), 0.0);
    const Voltages at = voltages(state, y);
    const double inlet_Pa = gasAt(y, Inlet, 20e-6).pressure_Pa;
    constexpr double kPower = 0.4 / 1.4;
    const double compression_Nm =
        6e-4 / 260 / kPower * inlet_Pa * (std::pow(kAmbient_Pa / inlet_Pa, kPower) - 1);
    f[Current] = (at.motor_V - 1.0 * y[Current] - 0.025 * y[Speed]) / 0.5e-3;
    f[Speed] = (0.025 * y[Current] - std::tanh(y[Speed]) * (compression_Nm + 0.025) - 5e-5 * y[Speed]) / 4e-5;
    f[Coil] = (at.coil_V - kCoil_ohm * y[Coil]) / kCoil_H;
    f[Charge] =
        -(openCircuit_V(y[Charge]) - at.supply_V) / (kEmpty_ohm + 2 * VanByHand::kWire_ohm + 0.002) / 216e3;
    const double share = y[Filament] / 2500;
    const double radiated_W = kLamp_W * (std::pow(share, 4) - std::pow(kAmbient_K / 2500, 4));
    f[Filament] =
        (at.lamp_V * at.lamp_V * filament_S(y[Filament]) - radiated_W) / (4 * kLamp_W * 0.04 / 2500);
    vacuumRight(state, t, y, f);
}

/// What must come to zero: the trigger, and the coil for the armature.
void roots(const State& state, double t, std::span<const double> y, std::span<double> values) {
    if (state.van.trigger == VanByHand::Trigger::BrakeLamps) {
        values[0] = state.pedal_N(t) - (state.triggered ? 0.9 * 15 : 15);
    } else {
        const double vacuum_Pa = kAmbient_Pa - gasAt(y, Sensor, 2e-6).pressure_Pa;
        values[0] = vacuum_Pa - (state.van.setPoint_Pa + (state.triggered ? state.van.differential_Pa : 0));
    }
    const bool held = state.moving > 0 || (state.moving == 0 && state.in);
    values[1] = std::abs(y[Coil]) - (held ? kDropOut_A : kPullIn_A);
}

/// Changes what stands due; the armature turns round on its way where the coil changes its mind.
std::string happen(State& state, double t, std::span<const double> y) {
    if (t >= state.arrives_s) {
        const bool arrivesIn = state.moving > 0;
        state.moving = 0;
        state.arrives_s = std::numeric_limits<double>::infinity();
        state.in = arrivesIn;
        const bool moves = state.contact != arrivesIn;
        state.contact = arrivesIn;
        return !moves ? "armature is back" : arrivesIn ? "contacts close" : "contacts open";
    }
    std::array<double, 2> values{};
    roots(state, t, y, values);
    const bool lamps = state.van.trigger == VanByHand::Trigger::BrakeLamps;
    if (std::abs(values[0]) < (lamps ? 1e-6 : 1e-3)) {
        state.triggered = !state.triggered;
        if (lamps) {
            return state.triggered ? "pedal: contacts close" : "pedal: contacts open";
        }
        return state.triggered ? "vacuum switch closes" : "vacuum switch opens";
    }
    const bool held = state.moving > 0 || (state.moving == 0 && state.in);
    const double left = state.arrives_s - t;
    double behind = state.in ? 1 : 0;
    if (state.moving != 0) {
        behind = state.moving > 0 ? 1 - left / kOperate_s : left / kRelease_s;
    }
    state.moving = held ? -1 : 1;
    state.arrives_s = t + (held ? behind * kRelease_s : (1 - behind) * kOperate_s);
    return held ? "armature lets go" : "armature pulls in";
}

std::vector<double> startOf(const VanByHand& van) {
    std::vector<double> y(Count, 0.0);
    y[Charge] = 1;
    y[Filament] = kAmbient_K;
    const auto fill = [&](std::size_t index, double volume_m3, double vacuum_Pa) {
        y[index] = (kAmbient_Pa - vacuum_Pa) * volume_m3 / (kGas * kAmbient_K);
        y[index + 1] = y[index] * kHeatVolume * kAmbient_K;
    };
    fill(Inlet, 20e-6, 0);
    fill(PumpEnd, 5e-6, 0);
    fill(BoosterEnd, 5e-6, van.initialVacuum_Pa);
    fill(Tee, 5e-6, van.initialVacuum_Pa);
    fill(Sensor, 2e-6, van.initialVacuum_Pa);
    fill(Vacuum, kVacuum_m3, van.initialVacuum_Pa);
    fill(Working, kWorking_m3, van.initialVacuum_Pa);
    return y;
}

std::vector<double> kinksOf(const VanByHand& van) {
    std::vector<double> kinks;
    for (const Press& press : van.presses) {
        kinks.insert(kinks.end(), {press.at_s, press.at_s + press.rise_s, press.at_s + press.hold_s,
                                   press.at_s + press.hold_s + press.rise_s});
    }
    kinks.push_back(van.duration_s);
    return kinks;
}

VanByHand::Sample sampleAt(const State& state, double t, std::span<const double> y) {
    const double vacuum_Pa =
        kAmbient_Pa - gasAt(y, Vacuum, kVacuum_m3 - kDiaphragm_m2 * y[Travel]).pressure_Pa;
    return {t, vacuum_Pa, y[Speed], y[Current], voltages(state, y).supply_V, y[Filament]};
}

} // namespace

VanByHand::Drive VanByHand::drive(double relativeTolerance) const {
    Drive result;
    State state{*this};
    CvodePeer::Problem problem;
    problem.start = startOf(*this);
    // as a share of each quantity's size
    const std::vector<double> full = startOf(VanByHand{});
    const std::array sizes{1.0, 10.0, 0.01, 1.0, 0.01, 300.0};
    for (std::size_t i = 0; i < Count; ++i) {
        problem.absoluteTolerances.push_back(relativeTolerance * (i < Inlet ? sizes[i] : 0.1 * full[i]));
    }
    problem.right = [&](double t, auto y, auto f) { right(state, t, y, f); };
    problem.rootCount = 2;
    problem.roots = [&](double t, auto y, auto values) { roots(state, t, y, values); };
    // Too little vacuum closes the switch before anything else.
    if (trigger == Trigger::VacuumSwitch && initialVacuum_Pa <= setPoint_Pa) {
        state.triggered = true;
        result.events.push_back({0, "vacuum switch closes"});
    }
    CvodePeer peer(std::move(problem), relativeTolerance);
    const std::vector<double> kinks = kinksOf(*this);
    std::size_t nextSample = 0;
    while (peer.time_s() < duration_s) {
        const double now_s = peer.time_s();
        const auto kink = std::find_if(kinks.begin(), kinks.end(), [&](double k) { return k > now_s; });
        const auto outcome = peer.step(std::min(*kink, state.arrives_s));
        if (outcome == CvodePeer::Outcome::Failed) {
            return result;
        }
        while (sampleEvery_s > 0 && static_cast<double>(nextSample) * sampleEvery_s <= peer.time_s()) {
            const double at_s = static_cast<double>(nextSample++) * sampleEvery_s;
            result.samples.push_back(sampleAt(state, at_s, at_s > 0 ? peer.at(at_s) : startOf(*this)));
        }
        if (outcome == CvodePeer::Outcome::Root || peer.time_s() >= state.arrives_s) {
            result.events.push_back({peer.time_s(), happen(state, peer.time_s(), peer.y())});
        }
        if (outcome != CvodePeer::Outcome::Step) {
            peer.restart();
        }
    }
    result.finished = true;
    result.steps = peer.steps();
    return result;
}

} // namespace pumpwright::test
