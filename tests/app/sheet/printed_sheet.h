#pragma once

#include "app/desktop/sheet/sheet_paper.h"
#include "core/checks/rule.h"
#include "core/nets/nets.h"
#include "tests/support/catch.h"

#include <QImage>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

namespace pumpwright {

/// What a program of poppler prints; empty and a failed check where it can't be run.
inline QString outputOf(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    const bool finished = process.waitForFinished(60'000) && process.exitCode() == 0;
    INFO(program.toStdString() << ": " << process.readAllStandardError().toStdString());
    CHECK(finished);
    return QString::fromUtf8(process.readAllStandardOutput());
}

/// Line breaks inside cells are no matter of content.
inline QString oneLine(const QString& text) {
    return text.simplified();
}

/// The sheet of a circuit, driven and checked, as a PDF in a folder that goes with it.
class PrintedSheet {
public:
    explicit PrintedSheet(const Circuit& circuit, SheetSize size = SheetSize::A4,
                          const BreakdownStudy& study = {}) {
        const auto drive = std::make_shared<const DriveResult>(simulateDrive(circuit));
        const Nets nets = findNets(circuit);
        const auto findings = checkCircuit({circuit, nets, drive.get()});
        m_paper = {circuit,
                   withTests(wiringSheet(circuit, findings, "k7m2q9xd"), circuit, study),
                   drive,
                   QStringLiteral("van.pumpwright"),
                   QStringLiteral("2026-03-02"),
                   size};
        REQUIRE(writeSheetPdf(path(), m_paper));
    }

    QString path() const { return m_folder.filePath(QStringLiteral("sheet.pdf")); }
    const SheetPaper& paper() const { return m_paper; }
    /// As laid out in columns of text, so that cells of one row stay together.
    QString text(const QStringList& options = {}) const {
        return outputOf(QStringLiteral("pdftotext"), options + QStringList{path(), QStringLiteral("-")});
    }

private:
    QTemporaryDir m_folder;
    SheetPaper m_paper;
};

inline bool hasWord(const QString& text, const std::string& word) {
    const QRegularExpression pattern(QStringLiteral("(^|[^\\w])%1([^\\w]|$)")
                                         .arg(QRegularExpression::escape(QString::fromStdString(word))));
    return text.contains(pattern);
}

inline void checkFontsEmbedded(const PrintedSheet& sheet) {
    const QStringList lines = outputOf(QStringLiteral("pdffonts"), {sheet.path()}).split(QLatin1Char('\n'));
    REQUIRE(lines.size() > 2); // two head lines
    const qsizetype column = lines[0].indexOf(QStringLiteral("emb"));
    for (const QString& line : lines.mid(2)) {
        if (!line.isEmpty()) {
            INFO(line.toStdString());
            CHECK(line.mid(column, 3) == QStringLiteral("yes"));
        }
    }
}

/// Zoomed to 216 dpi, a point is three units, and sizes are printed as whole numbers.
inline void checkNoTextBelow7pt(const PrintedSheet& sheet) {
    const QString fonts = outputOf(QStringLiteral("pdftohtml"),
                                   {QStringLiteral("-xml"), QStringLiteral("-i"), QStringLiteral("-stdout"),
                                    QStringLiteral("-zoom"), QStringLiteral("3"), sheet.path()});
    const QRegularExpression size(QStringLiteral("<fontspec [^>]*size=\"(\\d+)\""));
    int sizes = 0;
    for (auto match = size.globalMatch(fonts); match.hasNext();) {
        CHECK(match.next().captured(1).toInt() >= 21);
        ++sizes;
    }
    CHECK(sizes > 0);
}

} // namespace pumpwright
