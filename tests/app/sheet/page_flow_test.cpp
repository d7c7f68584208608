#include "app/desktop/sheet/page_flow.h"
#include "app/desktop/sheet/table_layout.h"
#include "tests/support/catch.h"

#include <QImage>
#include <QPainter>

using namespace pumpwright;
using Catch::WithinAbs;

namespace {

constexpr QRectF kSpace{0, 0, 2000, 1000};

SheetTable tableOf(std::size_t rows, const std::string& text = "cell") {
    SheetTable table{"Table", {"One", "Two"}, {false, true}, {}};
    for (std::size_t i = 0; i < rows; ++i) {
        table.rows.push_back({text, "1"});
    }
    return table;
}

} // namespace

TEST_CASE("a table that fits stays on one page", "[sheet][flow]") {
    PageFlow flow(kSpace);
    flow.addTable(tableOf(5));
    CHECK(flow.pageCount() == 1);
}

TEST_CASE("a long table goes on to as many pages as its rows and repeated heads need", "[sheet][flow]") {
    const TableLayout layout(tableOf(100), kSpace.width());
    const double room = kSpace.height() - layout.titleHeight() - layout.headHeight();
    const auto rowsOnAPage = static_cast<int>(room / layout.rowHeight(0));
    PageFlow flow(kSpace);
    flow.addTable(tableOf(100));
    CHECK(flow.pageCount() == (100 + rowsOnAPage - 1) / rowsOnAPage);
}

TEST_CASE("a table's title is not left alone at the foot of a page", "[sheet][flow]") {
    const TableLayout layout(tableOf(1), kSpace.width());
    const double needed = layout.titleHeight() + layout.headHeight() + layout.rowHeight(0);
    PageFlow flow(kSpace);
    flow.addBlock(kSpace.height() - needed, [](QPainter&, const QRectF&) {}); // with its gap one row too tall
    flow.addTable(tableOf(1));
    CHECK(flow.pageCount() == 2);
}

TEST_CASE("a block is never cut: what does not fit starts a page", "[sheet][flow]") {
    PageFlow flow(kSpace);
    QList<QRectF> boxes;
    for (int i = 0; i < 3; ++i) {
        flow.addBlock(400, [&boxes](QPainter&, const QRectF& box) { boxes.append(box); });
    }
    REQUIRE(flow.pageCount() == 2);
    QImage image(10, 10, QImage::Format_RGB32);
    QPainter painter(&image);
    flow.paint(painter, 0);
    CHECK(boxes.size() == 2);
    flow.paint(painter, 1);
    REQUIRE(boxes.size() == 3);
    CHECK_THAT(boxes[2].top(), WithinAbs(kSpace.top(), 1e-9));
    for (const QRectF& box : boxes) {
        CHECK(kSpace.contains(box));
    }
}

TEST_CASE("a table is as wide as its texts need, and never wider than the page", "[sheet][table]") {
    CHECK(TableLayout(tableOf(1), kSpace.width()).width() < kSpace.width() / 2);
    const std::string sentence(2000, 'x');
    CHECK(TableLayout(tableOf(1, sentence), kSpace.width()).width() <= kSpace.width() + 1e-6);
}

TEST_CASE("a cell too long for its line makes its row taller", "[sheet][table]") {
    const TableLayout plain(tableOf(1), kSpace.width());
    std::string words;
    for (int i = 0; i < 100; ++i) {
        words += "words and ";
    }
    const TableLayout tall(tableOf(1, words), kSpace.width());
    CHECK(tall.rowHeight(0) > 2 * plain.rowHeight(0));
}
