#include "tests/app/console/program_run.h"

#include <QDir>

using namespace pumpwright;

// The published schema of `check --json` against what the program prints, judged by a reference
// implementation of JSON Schema, draft 2020-12 (python3-jsonschema).

namespace {

QString source(const QString& path) {
    return QStringLiteral(PUMPWRIGHT_SOURCE_DIR "/") + path;
}

ProgramRun judged(const QString& good, const QString& bad) {
    QProcess process;
    process.start(QStringLiteral("/usr/bin/python3"),
                  {source(QStringLiteral("tests/core/files/schema_check.py")),
                   source(QStringLiteral("docs/check.schema.json")), good, bad});
    REQUIRE(process.waitForFinished(120'000));
    return {process.exitCode(), process.readAllStandardOutput(), process.readAllStandardError()};
}

QByteArray checked(const QString& file) {
    return run({QStringLiteral("check"), file, QStringLiteral("--json")}).out;
}

} // namespace

TEST_CASE("what check prints for every sample is valid by the published schema", "[console][schema]") {
    const CircuitFolder good;
    const CircuitFolder bad;
    const QFileInfoList samples = QDir(source(QStringLiteral("samples"))).entryInfoList(QDir::Files);
    REQUIRE(samples.size() >= 5);
    QByteArray output;
    for (const QFileInfo& sample : samples) {
        const QByteArray printed = checked(sample.filePath());
        good.withText(sample.completeBaseName(), printed);
        output = sample.completeBaseName() == QStringLiteral("first-try") ? printed : output;
    }
    good.withText(QStringLiteral("empty"),
                  checked(good.with(QStringLiteral("nothing.pumpwright"), Circuit{})));
    QFile::remove(good.path(QStringLiteral("nothing.pumpwright")));
    REQUIRE(output.contains("\"WARNING\""));
    const auto spoilt = [&](const char* before, const char* after) {
        QByteArray text = output;
        return text.replace(before, after);
    };
    bad.withText(QStringLiteral("word"), spoilt("\"signalWord\": \"WARNING\"", "\"signalWord\": \"ERROR\""));
    bad.withText(QStringLiteral("findings"), spoilt("\"findings\"", "\"found\""));
    bad.withText(QStringLiteral("remedies"), spoilt("\"byProgram\"", "\"program\""));
    const ProgramRun judgement = judged(good.path(QString()), bad.path(QString()));
    INFO(judgement.out.toStdString() << judgement.err.toStdString());
    CHECK(judgement.status == 0);
}
