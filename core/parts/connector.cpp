#include "core/parts/contact.h"
#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"
#include "core/units/text.h"

#include <array>
#include <charconv>

namespace pumpwright {
namespace {

constexpr std::array kParameters{
    ParameterSpec{"contactResistance_ohm", words("Contact resistance"), QuantityKind::Resistance, 0.003, 1e-5,
                  10, 0.5},
    ParameterSpec{"continuous_A", words("Continuous current of a pin"), QuantityKind::Current, 15, 0.1, 500},
};

const std::array kChoices{ChoiceSpec{
    "ways",
    words("Ways"),
    {{"2", words("2")}, {"1", words("1")}, {"3", words("3")}, {"4", words("4")}, {"6", words("6")}}}};

std::string pin(int way, char side) {
    return std::to_string(way) + side;
}

/// The first way's probes have no name, as the first contact of every part.
std::string wayName(int way) {
    return way == 1 ? std::string() : pin(way, 'a') + "-" + pin(way, 'b');
}

class ConnectorLaw final : public Law {
public:
    ConnectorLaw(int ways, double resistance_ohm, LawContext& context) : m_conductance_S(1 / resistance_ohm) {
        for (int way = 1; way <= ways; ++way) {
            m_ways.push_back({context.node(pin(way, 'a')), context.node(pin(way, 'b'))});
        }
    }

    void addEquations(const Point& at, Equations& equations) const override {
        for (const Way& way : m_ways) {
            equations.addConductance(at, way.from, way.to, m_conductance_S);
        }
    }
    void addAccount(const Point& at, Account& account) const override {
        for (const Way& way : m_ways) {
            const double voltage_V = at[way.from] - at[way.to];
            account.giveOff(m_conductance_S * voltage_V * voltage_V);
        }
    }
    std::vector<Probe> probes() const override {
        std::vector<Probe> probes;
        for (int way = 1; way <= static_cast<int>(m_ways.size()); ++way) {
            const auto contact = contactProbes(wayName(way));
            probes.insert(probes.end(), contact.begin(), contact.end());
        }
        return probes;
    }
    void probeValues(const Point& at, std::span<double> values) const override {
        for (std::size_t i = 0; i < m_ways.size(); ++i) {
            values[2 * i] = 1;
            values[2 * i + 1] = m_conductance_S * (at[m_ways[i].from] - at[m_ways[i].to]);
        }
    }

private:
    struct Way {
        Unknown from;
        Unknown to;
    };

    double m_conductance_S;
    std::vector<Way> m_ways;
};

class ConnectorKind final : public PartKind {
public:
    std::string_view id() const override { return "connector"; }
    std::string_view title() const override { return words("Connector"); }
    DrawerGroup group() const override { return DrawerGroup::Connection; }
    std::string_view letter() const override { return "X"; }

    std::vector<TerminalSpec> terminals(const Part& part) const override {
        std::vector<TerminalSpec> terminals;
        for (int way = 1; way <= ways(part); ++way) {
            const int y = 2 * (way - 1);
            terminals.push_back({pin(way, 'a'), {-1, y}, "pin " + std::to_string(way) + ", one half"});
            terminals.push_back({pin(way, 'b'), {1, y}, "pin " + std::to_string(way) + ", other half"});
        }
        return terminals;
    }
    std::span<const ParameterSpec> parameters() const override { return kParameters; }
    std::span<const ChoiceSpec> choices() const override { return kChoices; }

    Features features(const Part& part) const override {
        Features features;
        features.fitting = Fitting::Pin;
        features.mayStandAlone = true;
        for (int way = 1; way <= ways(part); ++way) {
            features.paths.push_back({pin(way, 'a'), pin(way, 'b'), false, true});
            Contact contact{wayName(way), pin(way, 'a'), pin(way, 'b'), true};
            contact.rating.continuous_A = value(part, "continuous_A");
            features.contacts.push_back(contact);
        }
        return features;
    }
    std::unique_ptr<Law> law(const Part& part, LawContext& context) const override {
        return std::make_unique<ConnectorLaw>(ways(part), value(part, "contactResistance_ohm"), context);
    }

private:
    int ways(const Part& part) const {
        const std::string_view text = choice(part, "ways");
        int ways = 1;
        std::from_chars(text.data(), text.data() + text.size(), ways);
        return ways;
    }
};

} // namespace

const PartKind& connectorKind() {
    static const ConnectorKind kind;
    return kind;
}

} // namespace pumpwright
