// How long a wiring sheet takes: contents with the simulated tests, and the PDF, for circuits of about 30 and
// 200 parts.

#include "app/desktop/sheet/sheet_paper.h"
#include "core/files/circuit_file.h"
#include "tests/support/enlarged_circuit.h"

#include <QElapsedTimer>
#include <QGuiApplication>
#include <QTemporaryDir>

#include <fmt/core.h>

using namespace pumpwright;

namespace {

/// The contents take no study of breakdowns here: that is the engine's time, and the bench of drives tells
/// it.
void measure(const Circuit& circuit) {
    const QTemporaryDir folder;
    QElapsedTimer clock;
    clock.start();
    SheetPaper paper;
    paper.circuit = circuit;
    paper.content = wiringSheet(circuit, {}, circuitCheckSum(circuit));
    const qint64 plain = clock.elapsed();
    paper.content = withTests(paper.content, circuit);
    const qint64 content = clock.elapsed();
    const bool written = writeSheetPdf(folder.filePath(QStringLiteral("sheet.pdf")), paper).has_value();
    fmt::print("{:4} parts, {:4} wires: tables {} ms, simulated tests {} ms, PDF {} ms, together {} ms{}\n",
               circuit.parts.size(), circuit.wires.size(), plain, content - plain, clock.elapsed() - content,
               clock.elapsed(), written ? "" : " (not written)");
}

} // namespace

int main(int argc, char** argv) {
    const QGuiApplication application(argc, argv);
    const Result<Circuit> circuit = readCircuit(argc > 1 ? argv[1] : "samples/put-right.pumpwright");
    if (!circuit) {
        fmt::print("{}\n", circuit.error().text);
        return 1;
    }
    for (const std::size_t parts : {19U, 31U, 201U}) {
        measure(enlarged(*circuit, parts));
    }
    return 0;
}
