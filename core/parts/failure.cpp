#include "core/parts/failure.h"

#include <algorithm>
#include <string_view>

namespace pumpwright {
namespace {

/// Adds failures whose ids stay unique: a part with two contacts has "contact-welded" and
/// "contact-welded-2".
class FailureList {
public:
    void add(std::string_view id, std::string title, FailureEffect effect) {
        const auto same = std::ranges::count_if(
            m_failures, [&](const Failure& one) { return one.id == id || one.id.starts_with(stem(id)); });
        std::string unique(id);
        if (same > 0) {
            unique += "-" + std::to_string(same + 1);
        }
        m_failures.push_back({std::move(unique), std::move(title), {std::move(effect)}});
    }
    std::vector<Failure> take() { return std::move(m_failures); }

private:
    static std::string stem(std::string_view id) { return std::string(id) + "-"; }

    std::vector<Failure> m_failures;
};

void addContacts(FailureList& list, const Features& features) {
    for (const Contact& contact : features.contacts) {
        const std::string which =
            features.contacts.size() > 1 ? " " + contact.from + "-" + contact.to : std::string();
        if (contact.semiconductor) {
            list.add("output-shorted", "output" + which + " conducts always (shorted)",
                     JoinsTerminals{contact.from, contact.to});
            list.add("output-open", "output" + which + " never conducts", OpensTerminal{contact.to});
        } else {
            list.add("contact-welded", "contact" + which + " stays closed (welded)",
                     JoinsTerminals{contact.from, contact.to});
            list.add("contact-open", "contact" + which + " stays open", OpensTerminal{contact.to});
        }
    }
}

void addLoads(FailureList& list, const Features& features) {
    for (const Load& load : features.loads) {
        switch (load.sort) {
        case LoadSort::Motor:
            list.add("motor-dead", "motor does not turn (no current)", OpensTerminal{load.from});
            break;
        case LoadSort::Lamp:
            list.add("lamp-burnt-out", "burnt out", OpensTerminal{load.from});
            break;
        case LoadSort::Coil:
            list.add("coil-open", "coil burnt through", OpensTerminal{load.from});
            break;
        case LoadSort::Resistive:
            list.add("resistance-open", "burnt through", OpensTerminal{load.from});
            break;
        case LoadSort::Electronic:
            list.add("electronics-dead", "electronics between " + load.from + " and " + load.to + " dead",
                     OpensTerminal{load.from});
            break;
        }
    }
}

void addOthers(FailureList& list, const Features& features) {
    if (features.fuse) {
        list.add("fuse-blown", "blown", OpensTerminal{features.fuse->to});
    }
    if (features.rectifier) {
        list.add("diode-open", "open", OpensTerminal{features.rectifier->anode});
        list.add("diode-shorted", "shorted",
                 JoinsTerminals{features.rectifier->anode, features.rectifier->cathode});
    }
    if (features.storage) {
        list.add("capacitor-open", "open (dried out)", OpensTerminal{features.storage->plus});
        list.add("capacitor-shorted", "shorted",
                 JoinsTerminals{features.storage->plus, features.storage->minus});
    }
    if (features.source) {
        list.add("source-lost", "terminal off", OpensTerminal{features.source->plus});
    }
}

/// Plug and socket: paths that join and are neither contact nor fuse.
void addPins(FailureList& list, const Features& features) {
    for (const CurrentPath& path : features.paths) {
        const bool switched = std::ranges::any_of(features.contacts, [&](const Contact& contact) {
            return contact.from == path.from && contact.to == path.to;
        });
        if (path.joins && !switched && !features.fuse) {
            list.add("pin-open", "pin " + path.from + " makes no contact", OpensTerminal{path.to});
        }
    }
}

} // namespace

std::vector<Failure> failuresFromFeatures(const Features& features) {
    FailureList list;
    addContacts(list, features);
    addLoads(list, features);
    addOthers(list, features);
    addPins(list, features);
    return list.take();
}

} // namespace pumpwright
