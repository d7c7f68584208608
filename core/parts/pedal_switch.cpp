#include "core/parts/contact.h"
#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"
#include "core/units/text.h"

#include <array>

namespace pumpwright {
namespace {

constexpr auto kParameters = joined(std::array{ParameterSpec{"operateForce_N", words("Closes at pedal force"),
                                                             QuantityKind::Force, 15, 0.1, 1000, 0.2}},
                                    contactParameters({0.02, {10, 20, 10, 4, 0.01, 5e5}}));

/// It opens at this share of the force at which it closes, so that a resting foot does not make it flutter.
/// Common practice, no published source.
constexpr double kReleaseShare = 0.9;

/// The brake-lamp switch: a contact that closes with the pedal. Memory: is it closed.
class PedalSwitchLaw final : public Law {
public:
    PedalSwitchLaw(const ContactElement& contact, double operateForce_N)
        : m_contact(contact), m_operateForce_N(operateForce_N) {}

    void addEquations(const Point& at, Equations& equations) const override {
        m_contact.addEquations(at, closed(at), equations);
    }
    void addMasses(MassMatrix& masses) const override { m_contact.addMasses(masses); }
    void addAccount(const Point& at, Account& account) const override {
        m_contact.addAccount(at, closed(at), account);
    }

    std::vector<double> memoryAtStart() const override { return {0}; }
    std::size_t eventCount() const override { return 1; }
    double eventValue(std::size_t, const Point& at) const override {
        const double force_N = at.surroundings.pedalForce_N(at.time_s);
        return closed(at) ? kReleaseShare * m_operateForce_N - force_N : force_N - m_operateForce_N;
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
    double m_operateForce_N;
};

class PedalSwitchKind final : public PartKind {
public:
    std::string_view id() const override { return "pedal-switch"; }
    std::string_view title() const override { return words("Pedal switch"); }
    DrawerGroup group() const override { return DrawerGroup::Control; }
    std::string_view letter() const override { return "S"; }

    std::vector<TerminalSpec> terminals(const Part&) const override {
        return {{"1", {-2, 0}, words("contact")}, {"2", {2, 0}, words("contact")}};
    }
    std::span<const ParameterSpec> parameters() const override { return kParameters; }

    Features features(const Part& part) const override {
        Features features;
        features.paths = {{"1", "2", false, true}};
        features.contacts = {contactFeature(*this, part, "1", "2", Operator::Pedal)};
        features.setPoints = {"operateForce_N"};
        return features;
    }
    std::unique_ptr<Law> law(const Part& part, LawContext& context) const override {
        return std::make_unique<PedalSwitchLaw>(
            contactElement(*this, part, context.node("1"), context.node("2")), value(part, "operateForce_N"));
    }
};

} // namespace

const PartKind& pedalSwitchKind() {
    static const PedalSwitchKind kind;
    return kind;
}

} // namespace pumpwright
