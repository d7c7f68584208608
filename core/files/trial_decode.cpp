#include "core/files/circuit_decode.h"
#include "core/units/quoted_text.h"

#include <fmt/core.h>
#include <fmt/ranges.h>

#include <array>

namespace pumpwright {
namespace {

using ReadChange = Change (*)(const OrderedJson& value, const std::string& pointer, ReadFault& fault);

std::string decodedId(const OrderedJson& value, const std::string& pointer, ReadFault& fault) {
    if (!value.is_string()) {
        fault.refuse(ErrorCode::WrongType, pointer, fmt::format("Expected an id, not {}.", jsonSort(value)));
        return {};
    }
    return value.get<std::string>();
}

Waivers decodedWaivers(const OrderedJson& value, const std::string& pointer, ReadFault& fault) {
    Waivers waivers;
    if (!value.is_array()) {
        fault.refuse(ErrorCode::WrongType, pointer, fmt::format("Expected a list, not {}.", jsonSort(value)));
        return waivers;
    }
    for (std::size_t i = 0; i < value.size(); ++i) {
        waivers.push_back(decodedWaiver(value[i], fmt::format("{}/{}", pointer, i), fault));
    }
    return waivers;
}

struct NamedChange {
    std::string_view key;
    ReadChange read;
};

/// What a change may be: the key of its one-key object, and how what is under the key is read.
constexpr std::array<NamedChange, 12> kChanges{{
    {"putPart",
     [](const OrderedJson& value, const std::string& pointer, ReadFault& fault) -> Change {
         auto [id, part] = decodedPart(value, pointer, fault);
         return putPart(std::move(id), std::move(part));
     }},
    {"takePart",
     [](const OrderedJson& value, const std::string& pointer, ReadFault& fault) -> Change {
         return takePart({decodedId(value, pointer, fault)});
     }},
    {"putWire",
     [](const OrderedJson& value, const std::string& pointer, ReadFault& fault) -> Change {
         auto [id, wire] = decodedWire(value, pointer, fault);
         return putWire(std::move(id), std::move(wire));
     }},
    {"takeWire",
     [](const OrderedJson& value, const std::string& pointer, ReadFault& fault) -> Change {
         return takeWire({decodedId(value, pointer, fault)});
     }},
    {"putHose",
     [](const OrderedJson& value, const std::string& pointer, ReadFault& fault) -> Change {
         auto [id, hose] = decodedHose(value, pointer, fault);
         return putHose(std::move(id), std::move(hose));
     }},
    {"takeHose",
     [](const OrderedJson& value, const std::string& pointer, ReadFault& fault) -> Change {
         return takeHose({decodedId(value, pointer, fault)});
     }},
    {"putTrial",
     [](const OrderedJson& value, const std::string& pointer, ReadFault& fault) -> Change {
         auto [id, trial] = decodedTrial(value, pointer, fault);
         return putTrial(std::move(id), std::move(trial));
     }},
    {"takeTrial",
     [](const OrderedJson& value, const std::string& pointer, ReadFault& fault) -> Change {
         return takeTrial(decodedId(value, pointer, fault));
     }},
    {"replacePlan",
     [](const OrderedJson& value, const std::string& pointer, ReadFault& fault) -> Change {
         return replacePlan(decodedPlan(value, pointer, fault));
     }},
    {"replaceTitle",
     [](const OrderedJson& value, const std::string& pointer, ReadFault& fault) -> Change {
         return replaceTitle(decodedTitle(value, pointer, fault));
     }},
    {"replaceLimits",
     [](const OrderedJson& value, const std::string& pointer, ReadFault& fault) -> Change {
         return replaceLimits(decodedLimits(value, pointer, fault));
     }},
    {"replaceWaivers",
     [](const OrderedJson& value, const std::string& pointer, ReadFault& fault) -> Change {
         return replaceWaivers(decodedWaivers(value, pointer, fault));
     }},
}};

void readChange(const OrderedJson& value, const std::string& pointer, ReadFault& fault, Edit& edit) {
    ObjectReader object(value, pointer, fault);
    for (const NamedChange& change : kChanges) {
        if (const OrderedJson* content = object.member(change.key); content && value.size() == 1) {
            edit.changes.push_back(change.read(*content, object.pointerTo(change.key), fault));
            return;
        }
    }
    std::vector<std::string_view> keys;
    for (const NamedChange& change : kChanges) {
        keys.push_back(change.key);
    }
    fault.refuse(ErrorCode::UnknownChoice, pointer,
                 fmt::format("A change is an object with one key, one of: {}.", fmt::join(keys, ", ")));
}

} // namespace

std::pair<std::string, Trial> decodedTrial(const OrderedJson& value, const std::string& pointer,
                                           ReadFault& fault) {
    ObjectReader object(value, pointer, fault);
    std::string id = object.textOf("id");
    Trial trial;
    trial.name = object.text("name", id);
    trial.edit.name = object.text("editName", trial.name);
    object.forEach("changes", [&](const OrderedJson& change, const std::string& changePointer) {
        readChange(change, changePointer, fault, trial.edit);
    });
    trial.unknown = object.unknownKeys();
    return {std::move(id), std::move(trial)};
}

} // namespace pumpwright
