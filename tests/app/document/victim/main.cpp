// Edits a circuit without end, and tells each edit on standard output once it is made. To be killed.
#include "app/desktop/document/document.h"
#include "app/desktop/document/snapshots.h"
#include "core/parts/part_kind.h"

#include <QCoreApplication>
#include <QTimer>

#include <cstdio>

using namespace pumpwright;

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    Document document;
    const Snapshots snapshots(document, QString::fromLocal8Bit(argv[1]));
    QTimer user;
    int count = 0;
    QObject::connect(&user, &QTimer::timeout, &document, [&] {
        const PartId id = freePartId(document.circuit());
        document.apply(
            {"Place",
             {putPart(id, newPart(*partKinds().front(), "X" + std::to_string(++count), {count, 2}))}});
        std::printf("%d\n", count);
        std::fflush(stdout);
    });
    user.start(10);
    return QCoreApplication::exec();
}
