#include "core/files/json_text.h"

namespace pumpwright {

Json partJson(const Circuit& circuit, const PartId& id) {
    const auto part = circuit.parts.find(id);
    return {{"id", id.text}, {"reference", part == circuit.parts.end() ? id.text : part->second.reference}};
}

Json endJson(const Circuit& circuit, const End& end) {
    Json json = partJson(circuit, end.part);
    json["terminal"] = end.terminal;
    return json;
}

std::string jsonText(const Json& json) {
    constexpr int kIndent = 2;
    return json.dump(kIndent, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace pumpwright
