#pragma once

#include "core/circuit/circuit.h"
#include "core/files/circuit_file.h"
#include "tests/support/catch.h"

#include <QProcess>
#include <QTemporaryDir>

#include <nlohmann/json.hpp>

namespace pumpwright {

/// What one run of the program printed, and how it ended.
struct ProgramRun {
    int status = -1;
    QByteArray out;
    QByteArray err;
};

/// Runs the program as users do, without any display.
inline ProgramRun run(const QStringList& arguments) {
    QProcess process;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM", "XDG_RUNTIME_DIR"}) {
        environment.remove(QString::fromLatin1(name));
    }
    process.setProcessEnvironment(environment);
    process.start(QStringLiteral(PUMPWRIGHT_PROGRAM), arguments);
    REQUIRE(process.waitForFinished(120'000));
    REQUIRE(process.exitStatus() == QProcess::NormalExit);
    return {process.exitCode(), process.readAllStandardOutput(), process.readAllStandardError()};
}

/// What it printed, which must be JSON.
inline nlohmann::json parsed(const ProgramRun& run) {
    const nlohmann::json value = nlohmann::json::parse(run.out.toStdString(), nullptr, false);
    REQUIRE_FALSE(value.is_discarded());
    return value;
}

inline qsizetype longestLine(const QByteArray& text) {
    qsizetype longest = 0;
    for (const QString& line : QString::fromUtf8(text).split(QLatin1Char('\n'))) {
        longest = std::max(longest, line.size());
    }
    return longest;
}

/// A folder with circuit files, gone at the end.
class CircuitFolder {
public:
    QString path(const QString& name) const { return m_folder.filePath(name); }

    QString with(const QString& name, const Circuit& circuit) const {
        REQUIRE(writeCircuit(circuit, path(name).toStdString()));
        return path(name);
    }

    QString withText(const QString& name, const QByteArray& text) const {
        QFile file(path(name));
        REQUIRE(file.open(QIODevice::WriteOnly));
        file.write(text);
        return path(name);
    }

private:
    QTemporaryDir m_folder;
};

} // namespace pumpwright
