#include "core/files/samples_csv.h"

#include "core/files/csv_text.h"
#include "core/sheet/references.h"
#include "core/units/quantity_kind.h"

#include <fmt/format.h>

#include <cmath>

namespace pumpwright {
namespace {

template <class IdType, class Object>
std::string referenceIn(const std::map<IdType, Object>& objects, const std::string& id) {
    const auto found = objects.find(IdType{id});
    return found == objects.end() ? id : found->second.reference;
}

std::string subjectReference(const Circuit& circuit, const ChannelKey& key) {
    if (key.subject == Subject::Wire) {
        return referenceIn(circuit.wires, key.id);
    }
    if (key.subject == Subject::Hose) {
        return referenceIn(circuit.hoses, key.id);
    }
    return referenceIn(circuit.parts, key.id);
}

/// "K1 coilCurrent [A]"
std::string columnName(const Circuit& circuit, const Channel& channel) {
    const std::string_view unit = siUnit(channel.probe.kind);
    return channelName(circuit, channel.key) + (unit.empty() ? "" : fmt::format(" [{}]", unit));
}

} // namespace

std::string channelName(const Circuit& circuit, const ChannelKey& key) {
    const bool atPoint = key.subject == Subject::Terminal || key.subject == Subject::Port;
    return fmt::format("{}{}{}", subjectReference(circuit, key), atPoint ? ":" : " ", key.name);
}

std::string samplesCsv(const Circuit& circuit, const Recording& recording, double every_s) {
    std::vector<std::string> cells{"time [s]"};
    for (const Channel& channel : recording.channels) {
        cells.push_back(columnName(circuit, channel));
    }
    std::string text = csvLine(cells);
    const auto rows = static_cast<long>(std::floor(recording.duration_s / every_s * (1 + 1e-12)));
    for (long row = 0; row <= rows; ++row) {
        const double time_s = static_cast<double>(row) * every_s;
        text += fmt::format("{:.9g}", time_s);
        for (const Channel& channel : recording.channels) {
            text += fmt::format(",{:.7g}", channel.at(time_s));
        }
        text += '\n';
    }
    return text;
}

} // namespace pumpwright
