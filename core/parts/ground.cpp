#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"
#include "core/units/text.h"

#include <array>

namespace pumpwright {
namespace {

constexpr std::array kParameters{
    ParameterSpec{"contactResistance_ohm", words("Contact resistance"), QuantityKind::Resistance, 0.002, 1e-5,
                  100, 0.5},
};

/// A bolt on the vehicle body. All ground parts meet on the body, which is the reference node.
class GroundLaw final : public Law {
public:
    GroundLaw(Unknown terminal, double resistance_ohm)
        : m_terminal(terminal), m_conductance_S(1 / resistance_ohm) {}

    void addEquations(const Point& at, Equations& equations) const override {
        equations.addConductance(at, m_terminal, kReference, m_conductance_S);
    }
    void addAccount(const Point& at, Account& account) const override {
        account.giveOff(m_conductance_S * at[m_terminal] * at[m_terminal]);
    }
    std::vector<Probe> probes() const override {
        return {{probe::kCurrent, words("current into the body"), QuantityKind::Current, false, 1e-3}};
    }
    void probeValues(const Point& at, std::span<double> values) const override {
        values[0] = m_conductance_S * at[m_terminal];
    }

private:
    Unknown m_terminal;
    double m_conductance_S;
};

class GroundKind final : public PartKind {
public:
    std::string_view id() const override { return "ground"; }
    std::string_view title() const override { return words("Ground point"); }
    DrawerGroup group() const override { return DrawerGroup::Connection; }
    std::string_view letter() const override { return "X"; }

    std::vector<TerminalSpec> terminals(const Part&) const override {
        return {{"31", {0, -1}, words("to the vehicle body"), 4}};
    }
    std::span<const ParameterSpec> parameters() const override { return kParameters; }

    Features features(const Part&) const override {
        Features features;
        features.fitting = Fitting::Stud;
        features.ground = true;
        return features;
    }
    std::vector<Failure> failures(const Part&) const override {
        return {{"ground-lost", "has no contact with the body", {OpensTerminal{"31"}}},
                {"ground-corroded", "corroded to 0.1 ohm", {SetsValue{"contactResistance_ohm", 0.1}}}};
    }

    std::unique_ptr<Law> law(const Part& part, LawContext& context) const override {
        return std::make_unique<GroundLaw>(context.node("31"), value(part, "contactResistance_ohm"));
    }
};

} // namespace

const PartKind& groundKind() {
    static const GroundKind kind;
    return kind;
}

} // namespace pumpwright
