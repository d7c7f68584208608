#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"
#include "core/parts/saturation.h"
#include "core/units/text.h"

#include <array>

namespace pumpwright {
namespace {

constexpr std::array kParameters{
    ParameterSpec{"current_A", words("Current"), QuantityKind::Current, 0.02, 1e-4, 5},
    ParameterSpec{"minimumVoltage_V", words("Sounds from"), QuantityKind::Voltage, 3, 0.5, 30},
};

/// Of the minimum voltage: where it takes half its current.
constexpr double kKneeShare = 0.3;
/// [S] so that an unconnected terminal does not float.
constexpr double kLeak_S = 1e-9;

/// An electronic buzzer: nearly constant current, one polarity.
class BuzzerLaw final : public Law {
public:
    BuzzerLaw(double current_A, double minimum_V, LawContext& context)
        : m_plus(context.node("+")), m_minus(context.node("-")), m_current_A(current_A),
          m_minimum_V(minimum_V) {}

    void addEquations(const Point& at, Equations& equations) const override {
        const SmoothValue current = currentAt(at);
        equations.addCurrent(m_plus, m_minus, current.value);
        equations.addCurrentSlope(m_plus, m_minus, m_plus, current.slope);
        equations.addCurrentSlope(m_plus, m_minus, m_minus, -current.slope);
    }
    void addAccount(const Point& at, Account& account) const override {
        account.giveOff((at[m_plus] - at[m_minus]) * currentAt(at).value);
    }
    std::vector<Probe> probes() const override {
        return {{probe::kCurrent, words("current"), QuantityKind::Current, false, 1e-4},
                {probe::kEnergised, words("sounds"), QuantityKind::Number, true, 0.5}};
    }
    void probeValues(const Point& at, std::span<double> values) const override {
        values[0] = currentAt(at).value;
        values[1] = at[m_plus] - at[m_minus] >= m_minimum_V ? 1 : 0;
    }

private:
    SmoothValue currentAt(const Point& at) const {
        const double voltage_V = at[m_plus] - at[m_minus];
        const SmoothValue share = smoothOnset(voltage_V, kKneeShare * m_minimum_V);
        return {m_current_A * share.value + kLeak_S * voltage_V, m_current_A * share.slope + kLeak_S};
    }

    Unknown m_plus;
    Unknown m_minus;
    double m_current_A;
    double m_minimum_V;
};

class BuzzerKind final : public PartKind {
public:
    std::string_view id() const override { return "buzzer"; }
    std::string_view title() const override { return words("Buzzer"); }
    DrawerGroup group() const override { return DrawerGroup::Load; }
    std::string_view letter() const override { return "P"; }

    std::vector<TerminalSpec> terminals(const Part&) const override {
        return {{"+", {0, -2}, "+"}, {"-", {0, 2}, "−"}};
    }
    std::span<const ParameterSpec> parameters() const override { return kParameters; }

    Features features(const Part& part) const override {
        Features features;
        const double current_A = value(part, "current_A");
        features.paths = {{"+", "-", true}};
        features.loads = {
            {"+", "-", LoadSort::Electronic, current_A, current_A, value(part, "minimumVoltage_V")}};
        features.polarities = {{"+", "-"}};
        return features;
    }
    std::unique_ptr<Law> law(const Part& part, LawContext& context) const override {
        return std::make_unique<BuzzerLaw>(value(part, "current_A"), value(part, "minimumVoltage_V"),
                                           context);
    }
};

} // namespace

const PartKind& buzzerKind() {
    static const BuzzerKind kind;
    return kind;
}

} // namespace pumpwright
