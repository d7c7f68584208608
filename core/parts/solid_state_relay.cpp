#include "core/parts/junction.h"
#include "core/parts/kinds.h"
#include "core/parts/on_resistance.h"
#include "core/parts/part_kind.h"
#include "core/parts/saturation.h"
#include "core/units/text.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace pumpwright {
namespace {

constexpr std::array kParameters{
    ParameterSpec{"ratedCurrent_A", words("Rated current"), QuantityKind::Current, 60, 0.1, 1000},
    ParameterSpec{"resistiveShare", words("Share for a resistive load"), QuantityKind::Share, 0.70, 0.01, 1},
    ParameterSpec{"inductiveShare", words("Share for a motor or coil"), QuantityKind::Share, 0.20, 0.01, 1},
    ParameterSpec{"onResistance_ohm", words("On-resistance (25 °C)"), QuantityKind::Resistance, 0.010, 1e-4,
                  10, 0.2},
    ParameterSpec{"leakage_A", words("Leakage when off"), QuantityKind::Current, 1e-4, 0, 0.02},
    ParameterSpec{"breakdown_V", words("Output breaks down at"), QuantityKind::Voltage, 60, 20, 1200},
    ParameterSpec{"inputOn_V", words("Input on at"), QuantityKind::Voltage, 3, 0.5, 60, 0.15},
    ParameterSpec{"inputOff_V", words("Input off at"), QuantityKind::Voltage, 1, 0.2, 59, 0.15},
    ParameterSpec{"inputCurrent_A", words("Input current"), QuantityKind::Current, 0.010, 1e-4, 0.1},
    ParameterSpec{"thermalResistance_KperW", words("Junction to surroundings"),
                  QuantityKind::ThermalResistance, 10, 0.01, 200},
    ParameterSpec{"heatCapacity_JperK", words("Heat capacity"), QuantityKind::HeatCapacity, 30, 1e-3, 1e5},
};

/// [V] by which the input takes half its current, which is nearly constant above about 1 V. Common practice.
constexpr double kInputKnee_V = 0.2;
/// [S] across the input, so that an unconnected terminal does not float.
constexpr double kInputLeak_S = 1e-9;
/// [F] across the input: an optocoupler's and its circuit's. Common practice.
constexpr double kInputCapacitance_F = 1e-10;
/// [F] across the output. Common practice for a large field-effect transistor.
constexpr double kOutputCapacitance_F = 1e-9;
/// [V] over which the leakage sets in.
constexpr double kLeakageOnset_V = 1.0;
/// [K] Far beyond, where a real one has failed, the on-resistance stops rising.
constexpr double kOnRiseLimit_K = 500;

/// Input with a nearly constant current; output a field-effect transistor with its body diode, avalanche,
/// leakage and junction heat. Memory: does it conduct.
class SolidStateRelayLaw final : public Law {
public:
    struct Values {
        double onResistance_ohm;
        double leakage_A;
        double inputOn_V;
        double inputOff_V;
        double inputCurrent_A;
        double thermalResistance_KperW;
        double heatCapacity_JperK;
    };

    SolidStateRelayLaw(const Values& values, const JunctionValues& bodyDiode, LawContext& context)
        : m_values(values), m_inputPlus(context.node("A1")), m_inputMinus(context.node("A2")),
          m_plus(context.node("1")), m_minus(context.node("2")),
          m_ambient_K(context.surroundings().ambientTemperature_K()),
          m_junction(context.addUnknown({"junction temperature", m_ambient_K, 0.01})),
          m_bodyDiode(m_minus, m_plus, bodyDiode) {
        // Without a gap between the two the output could neither stay nor go.
        m_values.inputOff_V = std::min(m_values.inputOff_V, 0.95 * m_values.inputOn_V);
    }

    void addEquations(const Point& at, Equations& equations) const override {
        addInput(at, equations);
        const Output output = outputAt(at);
        equations.addCurrent(m_plus, m_minus, output.current_A);
        addVoltageSlope(equations, output.voltageSlope_S);
        equations.addCurrentSlope(m_plus, m_minus, m_junction, output.temperatureSlope_AperK);

        const double voltage_V = at[m_plus] - at[m_minus];
        const double loss_WperK = 1 / m_values.thermalResistance_KperW;
        equations.add(m_junction, voltage_V * output.current_A - loss_WperK * (at[m_junction] - m_ambient_K));
        const double heatSlope = output.current_A + voltage_V * output.voltageSlope_S;
        equations.addSlope(m_junction, m_plus, heatSlope);
        equations.addSlope(m_junction, m_minus, -heatSlope);
        equations.addSlope(m_junction, m_junction, voltage_V * output.temperatureSlope_AperK - loss_WperK);
    }

    void addMasses(MassMatrix& masses) const override {
        masses.addCapacitance(m_inputPlus, m_inputMinus, kInputCapacitance_F);
        masses.addCapacitance(m_plus, m_minus, kOutputCapacitance_F);
        masses.add(m_junction, m_junction, m_values.heatCapacity_JperK);
    }
    void addAccount(const Point& at, Account& account) const override {
        const double input_V = at[m_inputPlus] - at[m_inputMinus];
        const double output_V = at[m_plus] - at[m_minus];
        const double rise_K = at[m_junction] - m_ambient_K;
        account.giveOff(input_V * m_values.inputCurrent_A * smoothOnset(input_V, kInputKnee_V).value +
                        kInputLeak_S * input_V * input_V + rise_K / m_values.thermalResistance_KperW);
        account.held_J +=
            m_values.heatCapacity_JperK * rise_K +
            0.5 * (kInputCapacitance_F * input_V * input_V + kOutputCapacitance_F * output_V * output_V);
    }

    std::vector<double> memoryAtStart() const override { return {0}; }
    std::size_t eventCount() const override { return 1; }
    double eventValue(std::size_t, const Point& at) const override {
        const double input_V = at[m_inputPlus] - at[m_inputMinus];
        return conducts(at) ? m_values.inputOff_V - input_V : input_V - m_values.inputOn_V;
    }
    std::string happen(std::size_t, const Point&, std::span<double> memory) const override {
        memory[0] = 1 - memory[0];
        return memory[0] > 0 ? words("output conducts") : words("output blocks");
    }

    std::vector<Probe> probes() const override {
        return {{probe::kContact, words("output on"), QuantityKind::Number, true, 0.5},
                {probe::kContactCurrent, words("output current"), QuantityKind::Current, false, 1e-3},
                {probe::kTemperature, words("junction temperature"), QuantityKind::Temperature, false, 0.1}};
    }
    void probeValues(const Point& at, std::span<double> values) const override {
        values[0] = conducts(at) ? 1 : 0;
        values[1] = outputAt(at).current_A;
        values[2] = at[m_junction];
    }

private:
    struct Output {
        double current_A; ///< from + to −
        double voltageSlope_S;
        double temperatureSlope_AperK;
    };

    static bool conducts(const Point& at) { return at.memory[0] > 0; }

    void addInput(const Point& at, Equations& equations) const {
        const SmoothValue share = smoothOnset(at[m_inputPlus] - at[m_inputMinus], kInputKnee_V);
        const double slope_S = m_values.inputCurrent_A * share.slope;
        equations.addCurrent(m_inputPlus, m_inputMinus, m_values.inputCurrent_A * share.value);
        equations.addCurrentSlope(m_inputPlus, m_inputMinus, m_inputPlus, slope_S);
        equations.addCurrentSlope(m_inputPlus, m_inputMinus, m_inputMinus, -slope_S);
        equations.addConductance(at, m_inputPlus, m_inputMinus, kInputLeak_S);
    }

    void addVoltageSlope(Equations& equations, double slope_S) const {
        equations.addCurrentSlope(m_plus, m_minus, m_plus, slope_S);
        equations.addCurrentSlope(m_plus, m_minus, m_minus, -slope_S);
    }

    Output outputAt(const Point& at) const {
        const double voltage_V = at[m_plus] - at[m_minus];
        const SmoothValue body = m_bodyDiode.currentAt(-voltage_V);
        if (!conducts(at)) {
            const SmoothValue leak = smoothLimit(voltage_V, kLeakageOnset_V);
            const double leak_S = m_values.leakage_A / kLeakageOnset_V;
            return {leak_S * leak.value - body.value, leak_S * leak.slope + body.slope, 0};
        }
        const SmoothValue rise = smoothLimit(at[m_junction] - kOnReference_K, kOnRiseLimit_K);
        const double warm = std::max(1 + kOnCoefficient_perK * rise.value, kColdestShare);
        const double warmSlope = warm > kColdestShare ? kOnCoefficient_perK * rise.slope : 0.0;
        const double conductance_S = 1 / (m_values.onResistance_ohm * warm);
        return {conductance_S * voltage_V - body.value, conductance_S + body.slope,
                -conductance_S * voltage_V * warmSlope / warm};
    }

    /// The on-resistance falls no further than to this share in the cold.
    static constexpr double kColdestShare = 0.3;

    Values m_values;
    Unknown m_inputPlus;
    Unknown m_inputMinus;
    Unknown m_plus;
    Unknown m_minus;
    double m_ambient_K;
    Unknown m_junction;
    JunctionElement m_bodyDiode;
};

class SolidStateRelayKind final : public PartKind {
public:
    std::string_view id() const override { return "solid-state-relay"; }
    std::string_view title() const override { return words("Solid-state relay"); }
    DrawerGroup group() const override { return DrawerGroup::Control; }
    std::string_view letter() const override { return "K"; }

    std::vector<TerminalSpec> terminals(const Part&) const override {
        return {{"A1", {-3, -2}, words("control, +")},
                {"A2", {-3, 2}, words("control, −")},
                {"1", {3, -2}, words("output, +")},
                {"2", {3, 2}, words("output, −")}};
    }
    std::span<const ParameterSpec> parameters() const override { return kParameters; }

    Features features(const Part& part) const override {
        Features features;
        features.fitting = Fitting::Stud;
        const double rated_A = value(part, "ratedCurrent_A");
        const double input_A = value(part, "inputCurrent_A");
        features.paths = {{"A1", "A2", true}, {"1", "2", false, true}};
        features.loads = {{"A1", "A2", LoadSort::Electronic, input_A, input_A}};
        features.inputs = {{"A1", "A2", value(part, "inputOn_V"), value(part, "inputOff_V"), input_A, 0}};
        features.polarities = {{"A1", "A2"}, {"1", "2"}};
        Contact output{"", "1", "2"};
        output.by = Operator::Electronics;
        output.withstand_V = value(part, "breakdown_V");
        output.leakage_A = value(part, "leakage_A");
        output.onResistance_ohm = value(part, "onResistance_ohm");
        output.thermalResistance_KperW = value(part, "thermalResistance_KperW");
        output.semiconductor = true;
        output.resistiveShare = value(part, "resistiveShare");
        output.inductiveShare = value(part, "inductiveShare");
        output.rating = {rated_A, 0, rated_A, rated_A};
        features.contacts = {output};
        return features;
    }

    std::unique_ptr<Law> law(const Part& part, LawContext& context) const override {
        const double rated_A = value(part, "ratedCurrent_A");
        // A body diode of about 1 V at the rated current.
        const JunctionValues bodyDiode =
            rectifierValues(1.0, rated_A, 0.1 / rated_A, value(part, "breakdown_V"));
        return std::make_unique<SolidStateRelayLaw>(
            SolidStateRelayLaw::Values{value(part, "onResistance_ohm"), value(part, "leakage_A"),
                                       value(part, "inputOn_V"), value(part, "inputOff_V"),
                                       value(part, "inputCurrent_A"), value(part, "thermalResistance_KperW"),
                                       value(part, "heatCapacity_JperK")},
            bodyDiode, context);
    }
};

} // namespace

const PartKind& solidStateRelayKind() {
    static const SolidStateRelayKind kind;
    return kind;
}

} // namespace pumpwright
