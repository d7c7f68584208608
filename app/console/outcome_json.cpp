#include "app/console/outcome_json.h"

#include "app/console/drive_texts.h"
#include "core/checks/finding.h"
#include "core/files/csv_text.h"

namespace pumpwright {
namespace {

constexpr std::array kWords{SignalWord::Danger, SignalWord::Warning, SignalWord::Caution, SignalWord::Notice};

Json findingsJson(const DriveOutcome& outcome) {
    Json json = Json::object();
    for (const SignalWord word : kWords) {
        json[std::string(signalWordName(word))] = outcome.openFindings.at(static_cast<std::size_t>(word));
    }
    return json;
}

} // namespace

void addOutcome(Json& json, const DriveOutcome& outcome) {
    const DriveNumbers& numbers = outcome.numbers;
    json["status"] = statusName(outcome.status);
    json["message"] = outcome.message;
    json["chatters"] = numbers.chatters;
    json["mostClosings"] = numbers.mostClosings;
    json["presses"] = numbers.presses;
    json["lackingPresses"] = numbers.lackingPresses;
    json["leastAssist_share"] = numbers.leastAssistShare;
    json["lowestVacuum_Pa"] = numbers.lowestVacuum_Pa ? Json(*numbers.lowestVacuum_Pa) : Json(nullptr);
    json["reservePresses"] = outcome.reservePresses;
    json["pumpStarts"] = numbers.pumpStarts;
    json["pumpRunning_s"] = numbers.pumpRunning_s;
    json["open"] = findingsJson(outcome);
}

std::string flatCsv(const std::vector<Json>& objects, const std::string& leftOut) {
    std::string text;
    for (const Json& object : objects) {
        std::vector<std::string> keys;
        std::vector<std::string> cells;
        const Json flat = object.flatten();
        for (const auto& [pointer, value] : flat.items()) {
            if (!leftOut.empty() && pointer.starts_with("/" + leftOut)) {
                continue;
            }
            keys.push_back(pointer.substr(1));
            cells.push_back(value.is_string() ? value.get<std::string>()
                            : value.is_null() ? ""
                                              : value.dump());
        }
        text += text.empty() ? csvLine(keys) : "";
        text += csvLine(cells);
    }
    return text;
}

} // namespace pumpwright
