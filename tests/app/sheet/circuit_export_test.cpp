#include "app/desktop/sheet/circuit_export.h"
#include "tests/app/sheet/pump_circuit.h"
#include "tests/support/catch.h"

#include <QFile>
#include <QImage>
#include <QTemporaryDir>
#include <QXmlStreamReader>

using namespace pumpwright;

namespace {

QByteArray bytesOf(const QString& path) {
    QFile file(path);
    CHECK(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

} // namespace

TEST_CASE("the schematic alone is written as SVG, PNG and PDF", "[sheet][export]") {
    const QTemporaryDir folder;
    const auto written = [&](const char* name) {
        const QString path = folder.filePath(QLatin1String(name));
        REQUIRE(writeCircuitDrawing(path, pumpCircuit()));
        return path;
    };
    CHECK(bytesOf(written("a.pdf")).startsWith("%PDF-"));
    const QImage picture(written("a.png"));
    CHECK(picture.width() > 500);
    QXmlStreamReader svg(bytesOf(written("a.svg")));
    QString texts;
    while (!svg.atEnd()) {
        texts += svg.readNext() == QXmlStreamReader::Characters ? svg.text().toString() : QString();
    }
    CHECK_FALSE(svg.hasError());
    CHECK(texts.contains(QStringLiteral("K1")));
}

TEST_CASE("texts that look like markup are text in the SVG", "[sheet][export]") {
    Circuit circuit = pumpCircuit();
    circuit.parts.begin()->second.label = "<script>&";
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("a.svg"));
    REQUIRE(writeCircuitDrawing(path, circuit));
    const QByteArray bytes = bytesOf(path);
    CHECK_FALSE(bytes.contains("<script>"));
    CHECK(bytes.contains("&lt;script&gt;&amp;"));
}

TEST_CASE("a drawing in an unknown form is refused with what would be right", "[sheet][export]") {
    const Result<void> written = writeCircuitDrawing(QStringLiteral("a.gif"), pumpCircuit());
    REQUIRE_FALSE(written);
    CHECK(written.error().text.find(".svg") != std::string::npos);
}
