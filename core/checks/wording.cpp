#include "core/checks/wording.h"

namespace pumpwright {
namespace {

template <class Objects, class IdType>
std::string referenceOf(const Objects& objects, const IdType& id) {
    const auto found = objects.find(id);
    return found == objects.end() || found->second.reference.empty() ? id.text : found->second.reference;
}

template <class IdType>
std::vector<std::string> allNames(const Circuit& circuit, const std::vector<IdType>& ids) {
    std::vector<std::string> names;
    for (const IdType& id : ids) {
        names.push_back(nameOf(circuit, id));
    }
    return names;
}

} // namespace

std::string nameOf(const Circuit& circuit, const PartId& id) {
    return referenceOf(circuit.parts, id);
}

std::string nameOf(const Circuit& circuit, const WireId& id) {
    return referenceOf(circuit.wires, id);
}

std::string nameOf(const Circuit& circuit, const End& end) {
    return nameOf(circuit, end.part) + "." + end.terminal;
}

std::vector<std::string> namesOf(const Circuit& circuit, const std::vector<PartId>& ids) {
    return allNames(circuit, ids);
}

std::vector<std::string> namesOf(const Circuit& circuit, const std::vector<WireId>& ids) {
    return allNames(circuit, ids);
}

Text listOf(const std::vector<Text>& items) {
    Text list = items.empty() ? Text() : items.front();
    for (std::size_t i = 1; i < items.size(); ++i) {
        list = i + 1 == items.size() ? say("{} and {}", list, items[i]) : say("{}, {}", list, items[i]);
    }
    return list;
}

Text listOf(const std::vector<std::string>& names) {
    return listOf(std::vector<Text>(names.begin(), names.end()));
}

Text asSoonAsClosed(const std::vector<Text>& contacts) {
    if (contacts.empty()) {
        return {};
    }
    return contacts.size() == 1 ? say(" as soon as {} closes", contacts.front())
                                : say(" as soon as {} close", listOf(contacts));
}

Text inDriveAt(double time_s) {
    return say("in the drive at {}", amount(time_s, QuantityKind::Time));
}

Text pressesText(int count) {
    return count == 1 ? say("1 press") : say("{} presses", count);
}

std::string whole(double number) {
    return fmt::format("{:.0f}", number);
}

} // namespace pumpwright
