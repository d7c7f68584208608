#include "core/files/spread_rows.h"

#include "core/files/csv_table.h"
#include "core/files/csv_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>

namespace pumpwright {
namespace {

using Cells = std::vector<std::string>;

enum Column {
    CheckSum,
    Seed,
    Car,
    Status,
    Chatters,
    MostClosings,
    Presses,
    LackingPresses,
    LeastAssist,
    LowestVacuum,
    PumpStarts,
    PumpRunning,
    ColumnCount
};

const Cells kHead{"checkSum",        "seed",           "car",
                  "status",          "chatters",       "mostClosings",
                  "presses",         "lackingPresses", "leastAssist_share",
                  "lowestVacuum_Pa", "pumpStarts",     "pumpRunning_s"};

constexpr std::array kStatuses{std::pair(DriveStatus::Finished, "finished"),
                               std::pair(DriveStatus::Cancelled, "cancelled"),
                               std::pair(DriveStatus::Stopped, "stopped")};

template <class Number>
bool read(const std::string& cell, Number& value) {
    const auto [stop, fault] = std::from_chars(cell.data(), cell.data() + cell.size(), value);
    return fault == std::errc() && stop == cell.data() + cell.size();
}

bool readStatus(const std::string& cell, DriveStatus& status) {
    const auto found = std::ranges::find(kStatuses, cell, [](const auto& pair) { return pair.second; });
    status = found == kStatuses.end() ? status : found->first;
    return found != kStatuses.end();
}

bool readVacuum(const std::string& cell, std::optional<double>& vacuum_Pa) {
    double value = 0;
    if (cell.empty()) {
        return true;
    }
    const bool isNumber = read(cell, value);
    vacuum_Pa = value;
    return isNumber;
}

bool readCar(const Cells& cells, SpreadOrigin& origin, SpreadCar& car) {
    DriveNumbers& numbers = car.numbers;
    origin.checkSum = cells[CheckSum];
    numbers.chatters = cells[Chatters] == "true";
    return read(cells[Seed], origin.seed) && read(cells[Car], car.number) &&
           readStatus(cells[Status], car.status) && read(cells[MostClosings], numbers.mostClosings) &&
           read(cells[Presses], numbers.presses) && read(cells[LackingPresses], numbers.lackingPresses) &&
           read(cells[LeastAssist], numbers.leastAssistShare) &&
           readVacuum(cells[LowestVacuum], numbers.lowestVacuum_Pa) &&
           read(cells[PumpStarts], numbers.pumpStarts) && read(cells[PumpRunning], numbers.pumpRunning_s);
}

Error fault(ErrorCode code, std::string text, const std::string& fileName, int line) {
    return {code, std::move(text), {fileName, line, {}}};
}

/// Each car once, none between them missing.
Result<SpreadRows> checkedRows(SpreadRows rows, const std::string& fileName) {
    std::ranges::sort(rows.cars, {}, &SpreadCar::number);
    for (std::size_t i = 1; i < rows.cars.size(); ++i) {
        const std::uint64_t before = rows.cars[i - 1].number;
        const std::uint64_t number = rows.cars[i].number;
        if (number == before) {
            return tl::unexpected(
                fault(ErrorCode::DuplicateId, fmt::format("Car {} is there twice.", number), fileName, 0));
        }
        if (number != before + 1) {
            return tl::unexpected(
                fault(ErrorCode::MissingKey,
                      fmt::format("Cars {} to {} are missing: drive them too, with --from {} --count {}.",
                                  before + 1, number - 1, before + 1, number - before - 1),
                      fileName, 0));
        }
    }
    return rows;
}

} // namespace

std::string spreadHead() {
    return csvLine(kHead);
}

std::string spreadRow(const SpreadOrigin& origin, const SpreadCar& car) {
    const DriveNumbers& numbers = car.numbers;
    const auto status = std::ranges::find(kStatuses, car.status, [](const auto& pair) { return pair.first; });
    return csvLine({origin.checkSum, fmt::format("{}", origin.seed), fmt::format("{}", car.number),
                    status->second, numbers.chatters ? "true" : "false",
                    fmt::format("{}", numbers.mostClosings), fmt::format("{}", numbers.presses),
                    fmt::format("{}", numbers.lackingPresses), fmt::format("{}", numbers.leastAssistShare),
                    numbers.lowestVacuum_Pa ? fmt::format("{}", *numbers.lowestVacuum_Pa) : "",
                    fmt::format("{}", numbers.pumpStarts), fmt::format("{}", numbers.pumpRunning_s)});
}

Result<SpreadRows> parseSpreadRows(std::string_view text, const std::string& fileName) {
    SpreadRows rows;
    CsvReader reader(text, ',');
    while (reader.next()) {
        if (reader.cells() == kHead) {
            continue;
        }
        SpreadOrigin origin;
        SpreadCar car;
        if (reader.cells().size() != ColumnCount || !readCar(reader.cells(), origin, car)) {
            return tl::unexpected(fault(ErrorCode::NotANumber,
                                        "This is no row that \"spread --csv\" of this version writes.",
                                        fileName, reader.line()));
        }
        if (!rows.cars.empty() && origin != rows.origin) {
            return tl::unexpected(fault(ErrorCode::DanglingReference,
                                        "This row is of another circuit or seed than the first.", fileName,
                                        reader.line()));
        }
        rows.origin = origin;
        rows.cars.push_back(car);
    }
    if (rows.cars.empty()) {
        return tl::unexpected(fault(ErrorCode::NotANumber, "There is no car in it.", fileName, 0));
    }
    return checkedRows(std::move(rows), fileName);
}

} // namespace pumpwright
