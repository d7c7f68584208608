#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"
#include "core/units/text.h"

#include <array>

namespace pumpwright {
namespace {

constexpr std::array kParameters{
    ParameterSpec{"capacitance_F", words("Capacitance"), QuantityKind::Capacitance, 470e-6, 1e-10, 100, 0.2},
    ParameterSpec{"esr_ohm", words("Series resistance"), QuantityKind::Resistance, 0.2, 1e-4, 1000, 0.3},
    ParameterSpec{"workingVoltage_V", words("Working voltage"), QuantityKind::Voltage, 35, 1, 5000},
};

const std::array kChoices{
    ChoiceSpec{"polarised", words("Polarised"), {{"yes", words("yes")}, {"no", words("no")}}}};

/// [S/F] leakage of an electrolytic capacitor: a tenth of the usual limit of 0.01 µA per µF and volt. Common
/// practice, no published source.
constexpr double kLeakage_SperF = 1e-3;

/// A capacitance behind its series resistance; uncharged at the start.
class CapacitorLaw final : public Law {
public:
    CapacitorLaw(double capacitance_F, double esr_ohm, LawContext& context)
        : m_plus(context.node("+")), m_minus(context.node("-")),
          m_stored(context.addUnknown({"stored voltage", 0, 1e-4})), m_capacitance_F(capacitance_F),
          m_conductance_S(1 / esr_ohm), m_leak_S(kLeakage_SperF * capacitance_F) {}

    void addEquations(const Point& at, Equations& equations) const override {
        const double current_A = current(at);
        equations.addCurrent(m_plus, m_minus, current_A);
        equations.addCurrentSlope(m_plus, m_minus, m_plus, m_conductance_S);
        equations.addCurrentSlope(m_plus, m_minus, m_minus, -m_conductance_S);
        equations.addCurrentSlope(m_plus, m_minus, m_stored, -m_conductance_S);

        equations.add(m_stored, current_A - m_leak_S * at[m_stored]);
        equations.addSlope(m_stored, m_plus, m_conductance_S);
        equations.addSlope(m_stored, m_minus, -m_conductance_S);
        equations.addSlope(m_stored, m_stored, -m_conductance_S - m_leak_S);
    }
    void addMasses(MassMatrix& masses) const override { masses.add(m_stored, m_stored, m_capacitance_F); }
    void addAccount(const Point& at, Account& account) const override {
        const double current_A = current(at);
        const double stored_V = at[m_stored];
        account.giveOff(current_A * current_A / m_conductance_S + m_leak_S * stored_V * stored_V);
        account.held_J += 0.5 * m_capacitance_F * stored_V * stored_V;
    }

    std::vector<Probe> probes() const override {
        return {{probe::kCurrent, words("charging current"), QuantityKind::Current, false, 1e-3}};
    }
    void probeValues(const Point& at, std::span<double> values) const override { values[0] = current(at); }

private:
    double current(const Point& at) const {
        return m_conductance_S * (at[m_plus] - at[m_minus] - at[m_stored]);
    }

    Unknown m_plus;
    Unknown m_minus;
    Unknown m_stored;
    double m_capacitance_F;
    double m_conductance_S;
    double m_leak_S;
};

class CapacitorKind final : public PartKind {
public:
    std::string_view id() const override { return "capacitor"; }
    std::string_view title() const override { return words("Capacitor"); }
    DrawerGroup group() const override { return DrawerGroup::Suppression; }
    std::string_view letter() const override { return "C"; }

    std::vector<TerminalSpec> terminals(const Part&) const override {
        return {{"+", {0, -2}, words("+ where it is polarised")},
                {"-", {0, 2}, words("− where it is polarised")}};
    }
    std::span<const ParameterSpec> parameters() const override { return kParameters; }
    std::span<const ChoiceSpec> choices() const override { return kChoices; }

    Features features(const Part& part) const override {
        Features features;
        features.fitting = Fitting::Splice;
        features.storage = Storage{"+", "-", value(part, "capacitance_F"), choice(part, "polarised") == "yes",
                                   value(part, "esr_ohm")};
        if (features.storage->polarised) {
            features.polarities = {{"+", "-"}};
        }
        return features;
    }
    std::unique_ptr<Law> law(const Part& part, LawContext& context) const override {
        return std::make_unique<CapacitorLaw>(value(part, "capacitance_F"), value(part, "esr_ohm"), context);
    }
};

} // namespace

const PartKind& capacitorKind() {
    static const CapacitorKind kind;
    return kind;
}

} // namespace pumpwright
