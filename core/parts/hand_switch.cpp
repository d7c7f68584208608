#include "core/parts/contact.h"
#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"

#include <algorithm>
#include <array>

namespace pumpwright {
namespace {

constexpr auto kParameters = contactParameters({0.01, {10, 20, 10, 5, 0.01, 5e4}});

const std::array kChoices{ChoiceSpec{"atStart", "At the start", {{"off", "off"}, {"on", "on"}}}};

/// A contact that the driver moves as the drive plan says. Memory: is it closed.
class HandSwitchLaw final : public Law {
public:
    HandSwitchLaw(const ContactElement& contact, bool onAtStart, LawContext& context)
        : m_contact(contact), m_onAtStart(onAtStart) {
        for (const SwitchMove& move : context.surroundings().plan().switchMoves) {
            if (move.part == context.partId()) {
                m_moves.push_back(move);
            }
        }
    }

    void addEquations(const Point& at, Equations& equations) const override {
        m_contact.addEquations(at, closed(at), equations);
    }
    void addMasses(MassMatrix& masses) const override { m_contact.addMasses(masses); }

    std::vector<double> memoryAtStart() const override { return {m_onAtStart ? 1.0 : 0.0}; }
    std::size_t eventCount() const override { return 1; }
    double eventValue(std::size_t, const Point& at) const override {
        return wantedOn(at.time_s) == closed(at) ? -1 : 1;
    }
    std::string happen(std::size_t, const Point&, std::span<double> memory) const override {
        memory[0] = 1 - memory[0];
        return memory[0] > 0 ? "contacts close" : "contacts open";
    }
    double nextDue_s(double now_s, std::span<const double>) const override {
        const auto next = std::find_if(m_moves.begin(), m_moves.end(),
                                       [&](const SwitchMove& move) { return move.at_s > now_s; });
        return next == m_moves.end() ? std::numeric_limits<double>::infinity() : next->at_s;
    }

    std::vector<Probe> probes() const override { return contactProbes(); }
    void probeValues(const Point& at, std::span<double> values) const override {
        values[0] = closed(at) ? 1 : 0;
        values[1] = m_contact.current_A(at, closed(at));
    }

private:
    static bool closed(const Point& at) { return at.memory[0] > 0; }

    /// The plan's moves are in order of time; the last one made counts.
    bool wantedOn(double time_s) const {
        bool on = m_onAtStart;
        for (const SwitchMove& move : m_moves) {
            on = move.at_s <= time_s ? move.on : on;
        }
        return on;
    }

    ContactElement m_contact;
    bool m_onAtStart;
    std::vector<SwitchMove> m_moves;
};

class HandSwitchKind final : public PartKind {
public:
    std::string_view id() const override { return "hand-switch"; }
    std::string_view title() const override { return "Hand switch"; }
    DrawerGroup group() const override { return DrawerGroup::Control; }
    std::string_view letter() const override { return "S"; }

    std::vector<TerminalSpec> terminals(const Part&) const override {
        return {{"1", {-2, 0}, "contact"}, {"2", {2, 0}, "contact"}};
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
        return std::make_unique<HandSwitchLaw>(contact, choice(part, "atStart") == "on", context);
    }
};

} // namespace

const PartKind& handSwitchKind() {
    static const HandSwitchKind kind;
    return kind;
}

} // namespace pumpwright
