// Pages of the sheet as pictures, compared with pictures that were looked at and kept. After a change that is
// meant: PUMPWRIGHT_KEEP_PICTURES=1 app_sheet_test "[pictures]", and look at them.

#include "core/files/circuit_file.h"
#include "tests/app/sheet/printed_sheet.h"
#include "tests/app/sheet/pump_circuit.h"
#include "tests/support/enlarged_circuit.h"

#include <QDir>

using namespace pumpwright;

namespace {

// Tests run in the folder of the project.
const QString kKept = QStringLiteral("tests/app/sheet/pictures/");

QImage pictureOf(const PrintedSheet& sheet, int page) {
    const QTemporaryDir folder;
    const QString stem = folder.filePath(QStringLiteral("page"));
    const QString number = QString::number(page);
    outputOf(QStringLiteral("pdftoppm"),
             {QStringLiteral("-r"), QStringLiteral("60"), QStringLiteral("-gray"), QStringLiteral("-png"),
              QStringLiteral("-singlefile"), QStringLiteral("-f"), number, QStringLiteral("-l"), number,
              sheet.path(), stem});
    return QImage(stem + QStringLiteral(".png")).convertToFormat(QImage::Format_Grayscale8);
}

/// Mean grey of squares with a side of about 2.5 mm: what one rasteriser smears over two pixels and another
/// does not is the same here.
QImage blurred(const QImage& picture) {
    constexpr int kSquare = 6;
    return picture.scaled(picture.size() / kSquare, Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
        .convertToFormat(QImage::Format_Grayscale8);
}

/// Share of the squares that differ clearly.
double differentShare(const QImage& a, const QImage& b) {
    constexpr int kClearly = 40; ///< of 255 steps of grey
    const QImage left = blurred(a);
    const QImage right = blurred(b);
    int different = 0;
    for (int y = 0; y < left.height(); ++y) {
        for (int x = 0; x < left.width(); ++x) {
            different += std::abs(qGray(left.pixel(x, y)) - qGray(right.pixel(x, y))) > kClearly ? 1 : 0;
        }
    }
    return static_cast<double>(different) / (left.width() * left.height());
}

void checkPicture(const PrintedSheet& sheet, int page, const QString& name) {
    constexpr double kMostDifferent = 0.01;
    const QImage picture = pictureOf(sheet, page);
    REQUIRE_FALSE(picture.isNull());
    if (qEnvironmentVariableIsSet("PUMPWRIGHT_KEEP_PICTURES")) {
        REQUIRE(QDir().mkpath(kKept));
        REQUIRE(picture.save(kKept + name));
    }
    const QImage kept(kKept + name);
    INFO(name.toStdString());
    REQUIRE(kept.size() == picture.size());
    CHECK(differentShare(picture, kept.convertToFormat(QImage::Format_Grayscale8)) <= kMostDifferent);
}

/// The circuit alone, so that no reading of a simulation moves a line.
PrintedSheet drawnSheet(const Circuit& circuit, SheetSize size) {
    Circuit still = circuit;
    still.plan.presses.clear();
    return PrintedSheet(still, size);
}

} // namespace

TEST_CASE("schematic, title block and tables look as they were approved", "[sheet][pdf][pictures]") {
    const PrintedSheet sheet = drawnSheet(pumpCircuit(), SheetSize::A4);
    checkPicture(sheet, 1, QStringLiteral("pump-a4-1.png"));
    checkPicture(sheet, 2, QStringLiteral("pump-a4-2.png"));
    checkPicture(drawnSheet(pumpCircuit(), SheetSize::Letter), 1, QStringLiteral("pump-letter-1.png"));
    checkPicture(drawnSheet(pumpCircuit(), SheetSize::A3), 1, QStringLiteral("pump-a3-1.png"));
}

TEST_CASE("a circuit of sixty parts looks as it was approved", "[sheet][pdf][pictures]") {
    const auto sample = readCircuit("samples/put-right.pumpwright");
    REQUIRE(sample);
    const PrintedSheet sheet = drawnSheet(enlarged(*sample, 60), SheetSize::A4);
    checkPicture(sheet, 1, QStringLiteral("sixty-a4-1.png"));
    checkPicture(sheet, 2, QStringLiteral("sixty-a4-2.png"));
}

TEST_CASE("a page that lacks a table is not taken for the approved one", "[sheet][pictures]") {
    const PrintedSheet sheet = drawnSheet(pumpCircuit(), SheetSize::A4);
    CHECK(differentShare(pictureOf(sheet, 1), pictureOf(sheet, 2)) > 0.05);
    Circuit fewer = pumpCircuit();
    fewer.wires.erase(fewer.wires.begin());
    fewer.wires.erase(fewer.wires.begin());
    CHECK(differentShare(pictureOf(sheet, 2), pictureOf(drawnSheet(fewer, SheetSize::A4), 2)) > 0.01);
}
