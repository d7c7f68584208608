#pragma once

#include "app/desktop/sheet/sheet_paper.h"

#include <QObject>

#include <functional>

class QAction;
class QProgressDialog;
class QWidget;

namespace pumpwright {

class Analysis;
class Dialogs;
class Document;
class SheetMaker;

/// The wiring sheet on the screen, on paper and as PDF. It waits for findings and drive of the circuit as it
/// stands: a sheet never shows old ones.
class SheetActions final : public QObject {
    Q_OBJECT

public:
    SheetActions(Document& document, Analysis& analysis, Dialogs& dialogs, QWidget& window);

    /// For the parts list.
    void setPaper(SheetSize size) { m_size = size; }
    void setPrices(const PriceList& prices) { m_prices = prices; }

    QAction& preview() { return *m_preview; }
    QAction& print() { return *m_print; }
    QAction& writePdf() { return *m_writePdf; }

Q_SIGNALS:
    /// For the status line: what is waited for, what was written.
    void message(const QString& text);

private:
    /// Hands over the sheet of the circuit as it was, when it is made.
    void withPaper(const std::function<void(const SheetPaper&)>& act);
    void prepareWhileIdle();
    void showProgress(int done, int total);
    QString documentName() const;
    void openPreview(const SheetPaper& paper);
    void openPrintDialog(const SheetPaper& paper);
    void askAndWritePdf();
    void report(const Result<void>& written, const QString& path);

    Document& m_document;
    Analysis& m_analysis;
    Dialogs& m_dialogs;
    QWidget& m_window;
    PriceList m_prices;
    SheetSize m_size = SheetSize::A4;
    QAction* m_preview;
    QAction* m_print;
    QAction* m_writePdf;
    SheetMaker* m_maker;
    QProgressDialog* m_progress = nullptr; ///< while breakdowns are simulated
};

} // namespace pumpwright
