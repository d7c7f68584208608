#include "core/parts/contact.h"
#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"
#include "core/units/text.h"

#include <array>

namespace pumpwright {
namespace {

constexpr auto kParameters = contactParameters({0.01, {10, 20, 10, 5, 0.01, 5e4}});

const std::array kChoices{
    ChoiceSpec{"atStart", words("At the start"), {{"off", words("off")}, {"on", words("on")}}}};

/// A contact that the driver moves as the drive plan says. Memory: is it closed.
class HandSwitchLaw final : public Law {
public:
    HandSwitchLaw(const ContactElement& contact, bool onAtStart, PartId part)
        : m_contact(contact), m_onAtStart(onAtStart), m_part(std::move(part)) {}

    void addEquations(const Point& at, Equations& equations) const override {
        m_contact.addEquations(at, closed(at), equations);
    }
    void addMasses(MassMatrix& masses) const override { m_contact.addMasses(masses); }
    void addAccount(const Point& at, Account& account) const override {
        m_contact.addAccount(at, closed(at), account);
    }

    std::vector<double> memoryAtStart() const override { return {m_onAtStart ? 1.0 : 0.0}; }
    std::size_t eventCount() const override { return 1; }
    double eventValue(std::size_t, const Point& at) const override {
        const bool wantedOn = at.surroundings.switchOn(m_part, m_onAtStart, at.time_s);
        return wantedOn == closed(at) ? -1 : 1;
    }
    std::string happen(std::size_t, const Point&, std::span<double> memory) const override {
        memory[0] = 1 - memory[0];
        return memory[0] > 0 ? words("contacts close") : words("contacts open");
    }
    std::vector<Probe> probes() const override { return contactProbes(); }
    void probeValues(const Point& at, std::span<double> values) const override {
        values[0] = closed(at) ? 1 : 0;
        values[1] = m_contact.current_A(at, closed(at));
    }

private:
    static bool closed(const Point& at) { return at.memory[0] > 0; }

    ContactElement m_contact;
    bool m_onAtStart;
    PartId m_part;
};

class HandSwitchKind final : public PartKind {
public:
    std::string_view id() const override { return "hand-switch"; }
    std::string_view title() const override { return words("Hand switch"); }
    DrawerGroup group() const override { return DrawerGroup::Control; }
    std::string_view letter() const override { return "S"; }

    std::vector<TerminalSpec> terminals(const Part&) const override {
        return {{"1", {-2, 0}, words("contact")}, {"2", {2, 0}, words("contact")}};
    }
    std::span<const ParameterSpec> parameters() const override { return kParameters; }
    std::span<const ChoiceSpec> choices() const override { return kChoices; }

    Features features(const Part& part) const override {
        Features features;
        features.paths = {{"1", "2", false, true}};
        features.contacts = {contactFeature(*this, part, "1", "2", Operator::Hand)};
        features.contacts.front().closedAtRest = choice(part, "atStart") == "on";
        return features;
    }
    std::unique_ptr<Law> law(const Part& part, LawContext& context) const override {
        const ContactElement contact = contactElement(*this, part, context.node("1"), context.node("2"));
        return std::make_unique<HandSwitchLaw>(contact, choice(part, "atStart") == "on", context.partId());
    }
};

} // namespace

const PartKind& handSwitchKind() {
    static const HandSwitchKind kind;
    return kind;
}

} // namespace pumpwright
