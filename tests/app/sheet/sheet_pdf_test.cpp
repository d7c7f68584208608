#include "core/files/circuit_file.h"
#include "tests/app/sheet/printed_sheet.h"
#include "tests/app/sheet/pump_circuit.h"
#include "tests/support/catch.h"
#include "tests/support/enlarged_circuit.h"

#include <QFile>
#include <QRegularExpression>

using namespace pumpwright;

namespace {

const PrintedSheet& pumpSheet() {
    static const PrintedSheet sheet(pumpCircuit());
    return sheet;
}

} // namespace

TEST_CASE("the printed sheet holds every wire, hose and part by its reference", "[sheet][pdf]") {
    const QString text = pumpSheet().text();
    const Circuit& circuit = pumpSheet().paper().circuit;
    for (const auto& [id, part] : circuit.parts) {
        INFO(part.reference);
        CHECK(hasWord(text, part.reference));
    }
    for (const auto& [id, wire] : circuit.wires) {
        INFO(wire.reference);
        CHECK(hasWord(text, wire.reference));
    }
    for (const auto& [id, hose] : circuit.hoses) {
        INFO(hose.reference);
        CHECK(hasWord(text, hose.reference));
    }
}

TEST_CASE("every caution stands on the first page and again before the tests", "[sheet][pdf]") {
    const QString first = oneLine(pumpSheet().text({QStringLiteral("-l"), QStringLiteral("1")}));
    const QString all = oneLine(pumpSheet().text());
    for (const std::string& caution : cautions()) {
        const QString words = QString::fromStdString(caution);
        INFO(caution);
        CHECK(first.contains(words));
        CHECK(all.count(words) == 2);
    }
}

TEST_CASE("title block, file name and check sum are on the sheet", "[sheet][pdf]") {
    const QString first = oneLine(pumpSheet().text({QStringLiteral("-l"), QStringLiteral("1")}));
    for (const char* words :
         {"Legal owner", "Workshop in the yard", "Identification number", "VP-01", "Revision",
          "Date of issue", "2026-03-01", "Title", "Vacuum pump of the delivery van", "Creator", "N. N.",
          "Approved by", "Document type", "van.pumpwright", "k7m2q9xd", "2026-03-02"}) {
        INFO(words);
        CHECK(first.contains(QString::fromUtf8(words)));
    }
}

TEST_CASE("pages are counted", "[sheet][pdf]") {
    const QString info = outputOf(QStringLiteral("pdfinfo"), {pumpSheet().path()});
    const auto match = QRegularExpression(QStringLiteral("Pages:\\s+(\\d+)")).match(info);
    REQUIRE(match.hasMatch());
    const int pages = match.captured(1).toInt();
    CHECK(pages >= 3);
    const QString text = oneLine(pumpSheet().text());
    for (int page = 1; page <= pages; ++page) {
        CHECK(text.contains(QStringLiteral("%1 of %2").arg(page).arg(pages)));
    }
}

TEST_CASE("the sheet is A4 on its side", "[sheet][pdf]") {
    // ISO 216: A4 is 210 mm × 297 mm, which is 595.28 pt × 841.89 pt.
    const QString info = outputOf(QStringLiteral("pdfinfo"), {pumpSheet().path()});
    const auto match = QRegularExpression(QStringLiteral("Page size:\\s+([\\d.]+) x ([\\d.]+)")).match(info);
    REQUIRE(match.hasMatch());
    CHECK_THAT(match.captured(1).toDouble(), Catch::WithinAbs(841.89, 1.0));
    CHECK_THAT(match.captured(2).toDouble(), Catch::WithinAbs(595.28, 1.0));
}

TEST_CASE("the sheet is laid out for A3 and for US Letter too", "[sheet][pdf]") {
    // ISO 216: A3 is 297 mm × 420 mm, which is 841.89 pt × 1190.55 pt. US Letter is 8.5 in × 11 in: 612 pt ×
    // 792 pt.
    const std::pair<SheetSize, QSizeF> sizes[] = {{SheetSize::A3, {1190.55, 841.89}},
                                                  {SheetSize::Letter, {792, 612}}};
    for (const auto& [size, points] : sizes) {
        const PrintedSheet sheet(pumpCircuit(), size);
        const QString info = outputOf(QStringLiteral("pdfinfo"), {sheet.path()});
        const auto match =
            QRegularExpression(QStringLiteral("Page size:\\s+([\\d.]+) x ([\\d.]+)")).match(info);
        REQUIRE(match.hasMatch());
        CHECK_THAT(match.captured(1).toDouble(), Catch::WithinAbs(points.width(), 1.0));
        CHECK_THAT(match.captured(2).toDouble(), Catch::WithinAbs(points.height(), 1.0));
        for (const auto& [id, wire] : sheet.paper().circuit.wires) {
            CHECK(hasWord(sheet.text(), wire.reference));
        }
    }
}

TEST_CASE("how it works, sockets and every commissioning step are on the sheet", "[sheet][pdf]") {
    const QString text = oneLine(pumpSheet().text());
    const WiringSheet& content = pumpSheet().paper().content;
    for (const std::string& sentence : content.howItWorks) {
        INFO(sentence);
        CHECK(text.contains(QString::fromStdString(sentence)));
    }
    for (const std::string& condition : content.stopConditions) {
        CHECK(text.contains(QString::fromStdString(condition)));
    }
    CHECK(text.contains(QStringLiteral("Socket of K1 relay")));
    REQUIRE_FALSE(content.tests.empty());
    for (const SheetTable& stage : content.tests) {
        CHECK(text.contains(QString::fromStdString(stage.title)));
    }
}

TEST_CASE("all fonts are embedded", "[sheet][pdf]") {
    checkFontsEmbedded(pumpSheet());
}

TEST_CASE("no text is smaller than 7 pt", "[sheet][pdf]") {
    checkNoTextBelow7pt(pumpSheet());
}

TEST_CASE("a circuit of sixty parts prints readable: 7 pt at least, everything on it, match marks between "
          "its parts",
          "[sheet][pdf][sixty]") {
    const auto sample = readCircuit("samples/put-right.pumpwright");
    REQUIRE(sample);
    const PrintedSheet sheet(enlarged(*sample, 60));
    REQUIRE(sheet.paper().circuit.parts.size() >= 60);
    checkNoTextBelow7pt(sheet);
    checkFontsEmbedded(sheet);
    const QString text = sheet.text();
    for (const auto& [id, part] : sheet.paper().circuit.parts) {
        INFO(part.reference);
        CHECK(hasWord(text, part.reference));
    }
    for (const auto& [id, wire] : sheet.paper().circuit.wires) {
        INFO(wire.reference);
        CHECK(hasWord(text, wire.reference));
    }
    for (const std::string& caution : cautions()) {
        CHECK(oneLine(text).contains(QString::fromStdString(caution)));
    }
    const bool divided = text.contains(QStringLiteral("Schematic, part 1"));
    CHECK(divided == text.contains(QStringLiteral("goes on in part 2")));
}

TEST_CASE("fault finding stands on the sheet, each symptom over its measurements", "[sheet][pdf][faults]") {
    const Circuit circuit = pumpCircuit();
    BreakdownStudy study;
    BreakdownOutcome blown;
    blown.broken = {{Subject::Part, "F1", "fuse-blown", "F1: blown"}};
    blown.stopped = {PartId{"M1"}};
    study.outcomes = {blown};
    const PrintedSheet sheet(circuit, SheetSize::A4, study);
    const QString text = oneLine(sheet.text());
    CHECK(text.contains(QStringLiteral("Fault finding")));
    CHECK(text.contains(QStringLiteral("What you notice: M1 does not run")));
    CHECK(text.contains(QStringLiteral("F1: blown")));
}

TEST_CASE("a sheet of sixty wires repeats the head of its table on each page", "[sheet][pdf]") {
    CircuitBuilder builder;
    for (int i = 1; i <= 61; ++i) {
        builder.part("splice", "X" + std::to_string(i));
    }
    for (int i = 1; i <= 60; ++i) {
        builder.wire("X" + std::to_string(i) + ".1", "X" + std::to_string(i + 1) + ".1");
    }
    const PrintedSheet sheet(builder.build());
    const QString text = sheet.text();
    CHECK(text.contains(QStringLiteral("Wires (continued)")));
    CHECK(text.count(QStringLiteral("Insulation")) >= 2);
    CHECK(hasWord(text, "W60"));
}

TEST_CASE("texts that look like markup are printed as they are", "[sheet][pdf]") {
    Circuit circuit = pumpCircuit();
    circuit.title.title = "<b>5 < 6 & \"7\"</b>";
    circuit.parts.begin()->second.catalogue = "&amp;";
    const PrintedSheet sheet(circuit);
    CHECK(oneLine(sheet.text()).contains(QStringLiteral("<b>5 < 6 & \"7\"</b>")));
}

TEST_CASE("an empty circuit prints", "[sheet][pdf]") {
    const PrintedSheet sheet(Circuit{});
    CHECK(oneLine(sheet.text()).contains(QStringLiteral("Cautions")));
}

TEST_CASE("a sheet that can't be written says where and why, and leaves nothing behind", "[sheet][pdf]") {
    const QString path = QStringLiteral("/nowhere/at/all/sheet.pdf");
    const Result<void> written = writeSheetPdf(path, pumpSheet().paper());
    REQUIRE_FALSE(written);
    CHECK(written.error().code == ErrorCode::FileUnwritable);
    CHECK(written.error().place.file == path.toStdString());
    CHECK_FALSE(QFile::exists(path));
}
