// Every reader of tables on any bytes: no crash, and what is read keeps its promises.

#include "core/files/bench_log_csv.h"
#include "core/files/speed_trace_csv.h"
#include "core/files/spread_rows.h"
#include "tests/fuzz/promise.h"

#include <algorithm>
#include <cstdint>

using namespace pumpwright;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string bytes = textOf(data, size);
    const std::string_view text = bytes;
    const auto table = parseCsvNumbers(text, "input");
    if (!table) {
        checkRefused(table.error());
    } else {
        require(table->names.size() == table->columns.size(), "each column has a name");
        for (const std::vector<double>& column : table->columns) {
            require(!column.empty() && column.size() == table->columns.front().size(),
                    "columns are equally long");
        }
        static const Circuit kNothing;
        LogReading reading;
        reading.timeColumn = timeColumnOf(*table);
        static_cast<void>(addToReading(reading, *table, text.substr(0, std::min<std::size_t>(size, 40))));
        if (!reading.columns.empty()) {
            static_cast<void>(benchLog(kNothing, *table, reading));
        }
    }
    if (const auto trace = parseSpeedTrace(text)) {
        require(std::ranges::is_sorted(trace->times_s), "times rise");
        require(trace->times_s.size() == trace->speeds_mps.size(), "each time has a speed");
        static_cast<void>(brakingsOf(*trace));
    }
    if (const auto rows = parseSpreadRows(text)) {
        std::string written;
        for (const SpreadCar& car : rows->cars) {
            written += spreadRow(rows->origin, car);
        }
        const auto again = parseSpreadRows(written);
        require(again && again->cars.size() == rows->cars.size(), "cars that are written are read");
    }
    return 0;
}
