// Edits a circuit without end, saves it now and then, and tells each edit on standard output once it is made:
// its number, and milliseconds since the start. To be killed. Use: snapshots_victim UNSAVED [FILE]
#include "app/desktop/document/document.h"
#include "app/desktop/document/snapshots.h"
#include "core/parts/part_kind.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QTimer>

#include <cstdio>

using namespace pumpwright;

namespace {

constexpr int kEditsBetweenSaves = 37; ///< so that now and then the kill hits a save

} // namespace

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    if (argc < 2) {
        return 2;
    }
    const QString saved = argc > 2 ? QString::fromLocal8Bit(argv[2]) : QString();
    Document document;
    const Snapshots snapshots(document, QString::fromLocal8Bit(argv[1]));
    QElapsedTimer clock;
    clock.start();
    QTimer user;
    int count = 0;
    QObject::connect(&user, &QTimer::timeout, &document, [&] {
        const PartId id = freePartId(document.circuit());
        document.apply(
            {"Place",
             {putPart(id, newPart(*partKinds().front(), "X" + std::to_string(++count), {count, 2}))}});
        std::printf("%d %s\n", count, QByteArray::number(clock.elapsed()).constData());
        std::fflush(stdout);
        if (!saved.isEmpty() && count % kEditsBetweenSaves == 1 && !document.save(saved)) {
            QCoreApplication::exit(3);
        }
    });
    user.start(10);
    return QCoreApplication::exec();
}
