#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"
#include "core/parts/saturation.h"
#include "core/units/text.h"

#include <array>
#include <cmath>

namespace pumpwright {
namespace {

constexpr std::array kParameters{
    ParameterSpec{"ratedPower_W", words("Rated power"), QuantityKind::Power, 5, 0.01, 1000, 0.1},
    ParameterSpec{"ratedVoltage_V", words("Rated voltage"), QuantityKind::Voltage, 12, 1, 60},
};

const std::array kChoices{
    ChoiceSpec{"sort", words("Sort"), {{"filament", words("filament")}, {"led", words("LED")}}}};

/// A tungsten filament at its rated voltage, and how its resistance goes with temperature: values from memory
/// of tungsten tables. Cold it carries about 13 times its rated current, as published multiples of 10 to 15
/// have it.
constexpr double kFilament_K = 2500;
constexpr double kResistancePower = 1.2;
constexpr double kColdInrush = 13;
/// [s] in which the glowing filament of a small lamp follows a small change. Common practice.
constexpr double kFilamentTime_s = 0.04;
/// [K] at and below which the filament's resistance falls no further.
constexpr double kColdest_K = 100;
/// The share of the rated power from which it counts as lit.
constexpr double kLitShare = 0.25;

/// A filament that radiates with the fourth power of its temperature.
class FilamentLaw final : public Law {
public:
    FilamentLaw(double power_W, double voltage_V, LawContext& context)
        : m_from(context.node("1")), m_to(context.node("2")), m_power_W(power_W),
          m_hotResistance_ohm(voltage_V * voltage_V / power_W),
          m_ambient_K(context.surroundings().ambientTemperature_K()),
          m_temperature(context.addUnknown({"filament temperature", m_ambient_K, 0.1})) {}

    void addEquations(const Point& at, Equations& equations) const override {
        const double voltage_V = at[m_from] - at[m_to];
        const SmoothValue conductance = conductanceAt(at[m_temperature]);
        equations.addConductance(at, m_from, m_to, conductance.value);
        equations.addCurrentSlope(m_from, m_to, m_temperature, voltage_V * conductance.slope);

        const SmoothValue radiation = radiationAt(at[m_temperature]);
        equations.add(m_temperature, voltage_V * voltage_V * conductance.value - radiation.value);
        equations.addSlope(m_temperature, m_from, 2 * voltage_V * conductance.value);
        equations.addSlope(m_temperature, m_to, -2 * voltage_V * conductance.value);
        equations.addSlope(m_temperature, m_temperature,
                           voltage_V * voltage_V * conductance.slope - radiation.slope);
    }
    void addMasses(MassMatrix& masses) const override {
        masses.add(m_temperature, m_temperature, heatCapacity_JperK());
    }
    void addAccount(const Point& at, Account& account) const override {
        account.giveOff(radiationAt(at[m_temperature]).value);
        account.held_J += heatCapacity_JperK() * (at[m_temperature] - m_ambient_K);
    }

    std::vector<Probe> probes() const override {
        return {{probe::kCurrent, words("current"), QuantityKind::Current, false, 1e-3},
                {probe::kTemperature, words("filament temperature"), QuantityKind::Temperature, false, 5},
                {probe::kEnergised, words("lit"), QuantityKind::Number, true, 0.5}};
    }
    void probeValues(const Point& at, std::span<double> values) const override {
        values[0] = conductanceAt(at[m_temperature]).value * (at[m_from] - at[m_to]);
        values[1] = at[m_temperature];
        values[2] = radiationAt(at[m_temperature]).value > kLitShare * m_power_W ? 1 : 0;
    }

private:
    double heatCapacity_JperK() const { return 4 * m_power_W * kFilamentTime_s / kFilament_K; }

    SmoothValue conductanceAt(double temperature_K) const {
        const SmoothValue above = smoothRamp(temperature_K - kColdest_K, 5);
        const double warm_K = kColdest_K + above.value;
        const double conductance_S = std::pow(warm_K / kFilament_K, -kResistancePower) / m_hotResistance_ohm;
        return {conductance_S, -kResistancePower * conductance_S * above.slope / warm_K};
    }

    /// [W] lost. Odd in the temperature, so that a trial value below zero is driven back up.
    SmoothValue radiationAt(double temperature_K) const {
        const double share = temperature_K / kFilament_K;
        const double cube = std::abs(share) * share * share;
        const double ambientShare = m_ambient_K / kFilament_K;
        return {m_power_W * (share * cube - std::pow(ambientShare, 4)), 4 * m_power_W * cube / kFilament_K};
    }

    Unknown m_from;
    Unknown m_to;
    double m_power_W;
    double m_hotResistance_ohm;
    double m_ambient_K;
    Unknown m_temperature;
};

/// A light-emitting diode with its driver, for either polarity: no current below half the rated voltage, a
/// nearly constant one above three quarters. Common practice, no published source.
class LedLaw final : public Law {
public:
    LedLaw(double power_W, double voltage_V, LawContext& context)
        : m_from(context.node("1")), m_to(context.node("2")), m_rated_A(power_W / voltage_V),
          m_rated_V(voltage_V) {}

    void addEquations(const Point& at, Equations& equations) const override {
        const SmoothValue current = currentAt(at[m_from] - at[m_to]);
        equations.addCurrent(m_from, m_to, current.value);
        equations.addCurrentSlope(m_from, m_to, m_from, current.slope);
        equations.addCurrentSlope(m_from, m_to, m_to, -current.slope);
    }
    void addAccount(const Point& at, Account& account) const override {
        const double voltage_V = at[m_from] - at[m_to];
        account.giveOff(voltage_V * currentAt(voltage_V).value);
    }
    std::vector<Probe> probes() const override {
        return {{probe::kCurrent, words("current"), QuantityKind::Current, false, 1e-4},
                {probe::kEnergised, words("lit"), QuantityKind::Number, true, 0.5}};
    }
    void probeValues(const Point& at, std::span<double> values) const override {
        values[0] = currentAt(at[m_from] - at[m_to]).value;
        values[1] = std::abs(values[0]) > kLitShare * m_rated_A ? 1 : 0;
    }

private:
    SmoothValue currentAt(double voltage_V) const {
        constexpr double kLeak_S = 1e-9;
        const double threshold_V = 0.5 * m_rated_V;
        const double width_V = 0.01 * m_rated_V;
        const double knee_V = 0.1 * m_rated_V;
        const SmoothValue above = smoothRamp(std::abs(voltage_V) - threshold_V, width_V);
        const SmoothValue share = smoothLimit(above.value / knee_V, 1);
        const double size_A = m_rated_A * share.value;
        return {std::copysign(size_A, voltage_V) + kLeak_S * voltage_V,
                m_rated_A * share.slope * above.slope / knee_V + kLeak_S};
    }

    Unknown m_from;
    Unknown m_to;
    double m_rated_A;
    double m_rated_V;
};

class LampKind final : public PartKind {
public:
    std::string_view id() const override { return "lamp"; }
    std::string_view title() const override { return words("Lamp"); }
    DrawerGroup group() const override { return DrawerGroup::Load; }
    std::string_view letter() const override { return "P"; }

    std::vector<TerminalSpec> terminals(const Part&) const override {
        return {{"1", {0, -2}, words("one end")}, {"2", {0, 2}, words("other end")}};
    }
    std::span<const ParameterSpec> parameters() const override { return kParameters; }
    std::span<const ChoiceSpec> choices() const override { return kChoices; }

    Features features(const Part& part) const override {
        Features features;
        const double rated_A = value(part, "ratedPower_W") / value(part, "ratedVoltage_V");
        const bool led = choice(part, "sort") == "led";
        features.paths = {{"1", "2"}};
        features.loads = {{"1", "2", led ? LoadSort::Electronic : LoadSort::Lamp, rated_A,
                           led ? rated_A : kColdInrush * rated_A}};
        return features;
    }
    std::unique_ptr<Law> law(const Part& part, LawContext& context) const override {
        const double power_W = value(part, "ratedPower_W");
        const double voltage_V = value(part, "ratedVoltage_V");
        if (choice(part, "sort") == "led") {
            return std::make_unique<LedLaw>(power_W, voltage_V, context);
        }
        return std::make_unique<FilamentLaw>(power_W, voltage_V, context);
    }
};

} // namespace

const PartKind& lampKind() {
    static const LampKind kind;
    return kind;
}

} // namespace pumpwright
