// Texts of a file are never markup, path or command: they come out as they are.

#include "app/desktop/sheet/circuit_export.h"
#include "core/files/circuit_file.h"
#include "core/files/csv_text.h"
#include "core/files/findings_text.h"
#include "tests/app/sheet/printed_sheet.h"
#include "tests/app/sheet/pump_circuit.h"

#include <QDir>
#include <QFile>
#include <QTextDocument>
#include <QXmlStreamReader>

using namespace pumpwright;

namespace {

/// One after the other, each the label of a ground point.
const std::vector<std::string> kNasty{"<b>5 & 6</b>",    "%s%n",  "${HOME}",    "../../up",
                                      "=cmd|' /C x'!A0", "&amp;", "\"quoted\"", "`ls`"};
constexpr char kTurned[] = "abc\u202Edef";

std::string manyEmoji() {
    std::string text;
    while (text.size() + 4 <= 4096) { // the longest text that a file may hold
        text += "\U0001F697";
    }
    return text;
}

Circuit nastyCircuit() {
    Circuit circuit = pumpCircuit();
    int number = 0;
    for (const std::string& label : kNasty) {
        Part ground = circuit.parts.at(PartId{"X1"});
        ground.reference = "X" + std::to_string(50 + number);
        ground.label = label;
        ground.at = {10 + 12 * (number % 5), 60 + 10 * (number / 5)};
        circuit.parts[PartId{"nasty" + std::to_string(number)}] = ground;
        ++number;
    }
    circuit.parts.at(PartId{"X2"}).label = kTurned;
    circuit.parts.at(PartId{"X3"}).label = manyEmoji();
    circuit.title.title = "<i>Title</i> & ${USER}";
    return circuit;
}

QString shownForm(const std::string& text) {
    return QString::fromStdString(text);
}

} // namespace

TEST_CASE("nasty texts stand on the printed sheet as they are, turning characters as marks",
          "[sheet][pdf][nasty]") {
    const PrintedSheet sheet(nastyCircuit());
    const QString text = oneLine(sheet.text());
    for (const std::string& label : kNasty) {
        INFO(label);
        CHECK(text.contains(shownForm(label)));
    }
    CHECK(text.contains(QStringLiteral("<i>Title</i> & ${USER}")));
    CHECK(text.contains(QStringLiteral("abc⟨U+202E⟩def")));
    CHECK_FALSE(text.contains(QChar(0x202E)));
}

TEST_CASE("nasty texts are text in the SVG, PNG and PDF of the schematic", "[sheet][export][nasty]") {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("a.svg"));
    REQUIRE(writeCircuitDrawing(path, nastyCircuit()));
    QFile file(path);
    REQUIRE(file.open(QIODevice::ReadOnly));
    QXmlStreamReader svg(&file);
    QString texts;
    QStringList elements;
    while (!svg.atEnd()) {
        const auto token = svg.readNext();
        texts +=
            token == QXmlStreamReader::Characters ? svg.text().toString() + QLatin1Char('\n') : QString();
        elements << (token == QXmlStreamReader::StartElement ? svg.name().toString() : QString());
    }
    CHECK_FALSE(svg.hasError());
    CHECK_FALSE(elements.contains(QStringLiteral("b")));
    for (const std::string& label : kNasty) {
        INFO(label);
        CHECK(texts.contains(shownForm(label)));
    }
    CHECK(texts.contains(QStringLiteral("abc⟨U+202E⟩def")));
    CHECK(writeCircuitDrawing(folder.filePath(QStringLiteral("a.png")), nastyCircuit()));
    CHECK(writeCircuitDrawing(folder.filePath(QStringLiteral("a.pdf")), nastyCircuit()));
}

TEST_CASE("nasty texts are cells of the CSV, and no formulas", "[sheet][csv][nasty]") {
    const std::string csv = csvTable(wiringSheet(nastyCircuit(), {}, "").connections);
    for (const char* cell : {",<b>5 & 6</b>,", ",%s%n,", ",${HOME},", ",../../up,", ",'=cmd|' /C x'!A0,",
                             ",&amp;,", ",\"\"\"quoted\"\"\",", ",`ls`,"}) {
        INFO(cell);
        CHECK(csv.find(cell) != std::string::npos);
    }
    CHECK(csv.find(manyEmoji()) != std::string::npos);
    CHECK(csv.find(kTurned) != std::string::npos);
}

TEST_CASE("a reader of Markdown sees nasty texts as they are", "[sheet][markdown][nasty]") {
    const Circuit circuit = nastyCircuit();
    std::vector<Finding> findings;
    for (const std::string& label : kNasty) {
        Finding finding;
        finding.title = label;
        finding.what = label;
        finding.remedies = {{label, std::nullopt}};
        findings.push_back(finding);
    }
    QTextDocument document;
    document.setMarkdown(
        QString::fromStdString(findingsMarkdown({"<b>.pumpwright", circuit, DriveResult{}, findings})));
    const QString text = document.toPlainText();
    for (const std::string& label : kNasty) {
        INFO(label);
        CHECK(text.count(shownForm(label)) >= 3);
    }
    CHECK(text.contains(QStringLiteral("<b>.pumpwright")));
    CHECK(text.contains(QStringLiteral("<i>Title</i> & ${USER}")));
}

TEST_CASE("a file's name is a name, whatever is in it", "[sheet][nasty]") {
    const QTemporaryDir folder;
    for (const char* name : {"<b>&%s.svg", "${HOME}.svg", "=cmd.svg", "..a.svg", "-o.svg", "a;b|c.svg"}) {
        INFO(name);
        REQUIRE(writeCircuitDrawing(folder.filePath(QString::fromUtf8(name)), pumpCircuit()));
        CHECK(QFile::exists(folder.filePath(QString::fromUtf8(name))));
    }
    CHECK(QDir(folder.path()).entryList(QDir::Files | QDir::Hidden).size() == 6);
}

TEST_CASE("a NUL in a file is refused with its place", "[sheet][nasty]") {
    const auto refused = parseCircuit(
        R"({"pumpwright": 1, "parts": [{"id": "a", "kind": "fuse", "reference": "F1", "label": "a\u0000b"}]})");
    REQUIRE_FALSE(refused);
    CHECK(refused.error().place.pointer == "/parts/0/label");
}
