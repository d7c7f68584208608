// How fast tables are read, and what memory the largest takes.

#include "core/files/csv_numbers.h"
#include "tests/bench/measures.h"

#include <fmt/format.h>

#include <array>
#include <string>

using namespace pumpwright;

namespace {

/// Ten million rows of a logger, made as they are read.
class Logger : public TextBlocks {
public:
    explicit Logger(std::size_t& bytes) : m_bytes(bytes) { m_bytes = 0; }

    Result<std::string_view> next() override {
        m_block.clear();
        for (; m_row < kMostCsvRows && m_block.size() < kBlockBytes; ++m_row) {
            m_block += kRows[m_row % kRows.size()];
        }
        m_bytes += m_block.size();
        return m_block;
    }

private:
    static constexpr std::array<std::string_view, 3> kRows{"1234.567,-45.1234\n", "1234.577,-45.2\n",
                                                           "1234.587,-46.0231\n"};
    std::size_t& m_bytes;
    std::string m_block;
    std::size_t m_row = 0;
};

} // namespace

int main() {
    std::size_t bytes = 0;
    std::size_t kept = 0;
    const double took_ms = milliseconds(3, [&] {
        const auto table = readCsvNumbers(std::make_unique<Logger>(bytes), "log.csv");
        kept = table ? table->columns.front().size() : 0;
    });
    fmt::print("a table of {} rows: {:.0f} MB at {:.0f} MB/s, {} rows kept, {:.0f} MiB held at most\n",
               kMostCsvRows, static_cast<double>(bytes) / 1e6, static_cast<double>(bytes) / 1e3 / took_ms,
               kept, peakMebibytes());
    return kept > 0 ? 0 : 1;
}
