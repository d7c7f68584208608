#include "tests/app/console/program_run.h"

#include <QElapsedTimer>
#include <QFile>
#include <QThread>

#include <csignal>

using namespace pumpwright;

namespace {

/// Waits until the program has taken the interrupt over, as its line of caught signals in /proc tells.
bool catchesInterrupts(qint64 process) {
    constexpr qulonglong kInterrupt = 1ULL << (SIGINT - 1);
    QElapsedTimer clock;
    for (clock.start(); clock.elapsed() < 20'000; QThread::msleep(20)) {
        QFile status(QStringLiteral("/proc/%1/status").arg(process));
        if (!status.open(QIODevice::ReadOnly)) {
            return false;
        }
        const QByteArray text = status.readAll();
        const qsizetype at = text.indexOf("SigCgt:") + 7;
        if ((text.mid(at, text.indexOf('\n', at) - at).trimmed().toULongLong(nullptr, 16) & kInterrupt) !=
            0) {
            return true;
        }
    }
    return false;
}

/// Starts a study of many drives, interrupts it, and tells how it ended and how long that took.
struct Interrupted {
    ProgramRun run;
    qint64 took_ms = 0;

    explicit Interrupted(const QStringList& arguments) {
        QProcess process;
        process.start(QStringLiteral(PUMPWRIGHT_PROGRAM), arguments);
        REQUIRE(process.waitForStarted(10'000));
        REQUIRE(catchesInterrupts(process.processId()));
        QThread::msleep(500); // it is driving by now
        QElapsedTimer clock;
        clock.start();
        REQUIRE(::kill(static_cast<pid_t>(process.processId()), SIGINT) == 0);
        REQUIRE(process.waitForFinished(10'000));
        took_ms = clock.elapsed();
        REQUIRE(process.exitStatus() == QProcess::NormalExit);
        run = {process.exitCode(), process.readAllStandardOutput(), process.readAllStandardError()};
    }
};

const QString kSample = QStringLiteral("samples/put-right.pumpwright");

} // namespace

TEST_CASE("an interrupted study prints what it had come to and ends with status 130",
          "[console][interrupt]") {
    const Interrupted spread(
        {QStringLiteral("spread"), kSample, QStringLiteral("--count"), QStringLiteral("9999")});
    CHECK(spread.run.status == 130);
    CHECK(spread.run.out.contains("Shares"));
    CHECK(spread.run.err.contains("interrupted after "));
    CHECK(spread.run.err.contains(" of 9999 drives"));
    INFO("took " << spread.took_ms << " ms");
    CHECK(spread.took_ms < 5000);
}

TEST_CASE("an interrupted study prints no half JSON", "[console][interrupt]") {
    const Interrupted spread({QStringLiteral("spread"), kSample, QStringLiteral("--count"),
                              QStringLiteral("9999"), QStringLiteral("--json")});
    CHECK(spread.run.status == 130);
    CHECK(spread.run.out.isEmpty());
}

TEST_CASE("an interrupted sheet is not written", "[console][interrupt]") {
    const QTemporaryDir folder;
    const QString pdf = folder.filePath(QStringLiteral("sheet.pdf"));
    const Interrupted sheet({QStringLiteral("sheet"), QStringLiteral("samples/first-try.pumpwright"),
                             QStringLiteral("--out"), pdf});
    CHECK(sheet.run.status == 130);
    CHECK_FALSE(QFile::exists(pdf));
}

TEST_CASE("progress is shown on a terminal only", "[console][interrupt]") {
    const ProgramRun piped =
        run({QStringLiteral("spread"), kSample, QStringLiteral("--count"), QStringLiteral("2")});
    CHECK(piped.status == 0);
    CHECK(piped.err.isEmpty());
}
