#pragma once

#include "app/desktop/sheet/sheet_paper.h"

#include <QObject>
#include <QThreadPool>

#include <functional>

class QAction;
class QWidget;

namespace pumpwright {

class Analysis;
class Dialogs;
class Document;

/// The wiring sheet on the screen, on paper and as PDF; drive chart and circuit as pictures. All of them wait
/// for findings and drive of the circuit as it stands: a sheet never shows old ones.
class SheetActions final : public QObject {
    Q_OBJECT

public:
    SheetActions(Document& document, Analysis& analysis, Dialogs& dialogs, QWidget& window);

    /// For the parts list.
    void setPrices(const PriceList& prices) { m_prices = prices; }

    QAction& preview() { return *m_preview; }
    QAction& print() { return *m_print; }
    QAction& writePdf() { return *m_writePdf; }
    QAction& writeChart() { return *m_writeChart; }
    QAction& writeDrawing() { return *m_writeDrawing; }

Q_SIGNALS:
    /// For the status line: what is waited for, what was written.
    void message(const QString& text);

private:
    void whenAnalysed(std::function<void()> act);
    /// Simulates the commissioning tests on another thread, then hands over the sheet of the circuit as it
    /// was.
    void withPaper(std::function<void(const SheetPaper&)> act);
    QString documentName() const;
    void openPreview(const SheetPaper& paper);
    void openPrintDialog(const SheetPaper& paper);
    void askAndWritePdf();
    void askAndWriteChart();
    void askAndWriteDrawing();
    void report(const Result<void>& written, const QString& path);

    Document& m_document;
    Analysis& m_analysis;
    Dialogs& m_dialogs;
    QWidget& m_window;
    PriceList m_prices;
    QAction* m_preview;
    QAction* m_print;
    QAction* m_writePdf;
    QAction* m_writeChart;
    QAction* m_writeDrawing;
    QThreadPool m_tester; ///< last, so that it ends first
};

} // namespace pumpwright
