#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"
#include "core/units/text.h"

#include <array>

namespace pumpwright {
namespace {

constexpr std::array kParameters{
    ParameterSpec{"resistance_ohm", words("Resistance"), QuantityKind::Resistance, 100, 1e-3, 1e9, 0.05},
    ParameterSpec{"ratedPower_W", words("Rated power"), QuantityKind::Power, 0.5, 1e-3, 1e4},
};

class ResistorLaw final : public Law {
public:
    ResistorLaw(Unknown from, Unknown to, double resistance_ohm)
        : m_from(from), m_to(to), m_conductance_S(1 / resistance_ohm) {}

    void addEquations(const Point& at, Equations& equations) const override {
        equations.addConductance(at, m_from, m_to, m_conductance_S);
    }
    void addAccount(const Point& at, Account& account) const override {
        const double voltage_V = at[m_from] - at[m_to];
        account.giveOff(m_conductance_S * voltage_V * voltage_V);
    }

    std::vector<Probe> probes() const override {
        return {{probe::kCurrent, words("current"), QuantityKind::Current, false, 1e-4}};
    }

    void probeValues(const Point& at, std::span<double> values) const override {
        values[0] = m_conductance_S * (at[m_from] - at[m_to]);
    }

private:
    Unknown m_from;
    Unknown m_to;
    double m_conductance_S;
};

class ResistorKind final : public PartKind {
public:
    std::string_view id() const override { return "resistor"; }
    std::string_view title() const override { return words("Resistor"); }
    DrawerGroup group() const override { return DrawerGroup::Suppression; }
    std::string_view letter() const override { return "R"; }

    std::vector<TerminalSpec> terminals(const Part&) const override {
        return {{"1", {-2, 0}, words("one end")}, {"2", {2, 0}, words("other end")}};
    }
    std::span<const ParameterSpec> parameters() const override { return kParameters; }

    Features features(const Part&) const override {
        Features features;
        features.fitting = Fitting::Splice;
        features.paths = {{"1", "2"}};
        return features;
    }

    std::unique_ptr<Law> law(const Part& part, LawContext& context) const override {
        return std::make_unique<ResistorLaw>(context.node("1"), context.node("2"),
                                             value(part, "resistance_ohm"));
    }
};

} // namespace

const PartKind& resistorKind() {
    static const ResistorKind kind;
    return kind;
}

} // namespace pumpwright
