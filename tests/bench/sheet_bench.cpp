// How long a wiring sheet takes: contents with the simulated tests, and the PDF, for circuits of about 30 and
// 200 parts.

#include "app/desktop/sheet/sheet_paper.h"
#include "core/files/circuit_file.h"

#include <QElapsedTimer>
#include <QGuiApplication>
#include <QTemporaryDir>

#include <fmt/core.h>

using namespace pumpwright;

namespace {

/// The circuit with as many more lamps on F2 as make it this large.
Circuit enlarged(Circuit circuit, std::size_t parts) {
    const Part lamp = circuit.parts.at(PartId{"P1"});
    const Part ground = circuit.parts.at(PartId{"X1"});
    for (int i = 0; circuit.parts.size() < parts; ++i) {
        const PartId lampId{"lamp" + std::to_string(i)};
        const PartId groundId{"ground" + std::to_string(i)};
        Part one = lamp;
        one.reference = freeReference(circuit, "P");
        one.at = {70 + 8 * (i % 12), 10 + 16 * (i / 12)};
        circuit.parts[lampId] = one;
        Part two = ground;
        two.reference = freeReference(circuit, "X");
        two.at = {one.at.x, one.at.y + 6};
        circuit.parts[groundId] = two;
        const std::pair<End, End> ends[] = {{{PartId{"F2"}, "2"}, {lampId, "1"}},
                                            {{lampId, "2"}, {groundId, "31"}}};
        for (const auto& [from, to] : ends) {
            Wire wire;
            wire.reference = freeReference(circuit, "W");
            wire.from = from;
            wire.to = to;
            wire.area_m2 = 0.75e-6;
            circuit.wires[freeWireId(circuit)] = wire;
        }
    }
    return circuit;
}

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
    fmt::print("{:4} parts, {:4} wires: tables {} ms, simulated tests {} ms, PDF {} ms{}\n",
               circuit.parts.size(), circuit.wires.size(), plain, content - plain, clock.elapsed() - content,
               written ? "" : " (not written)");
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
