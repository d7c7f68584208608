#pragma once

#include "core/sheet/bill.h"
#include "core/units/result.h"

#include <QList>
#include <QObject>

#include <functional>

class QAction;

namespace pumpwright {

class Analysis;
class Dialogs;
class Document;

/// Everything but the wiring sheet that leaves the program as a file: schematic, drive chart, tables,
/// findings. All wait for findings and drive of the circuit as it stands.
class ExportActions final : public QObject {
    Q_OBJECT

public:
    ExportActions(Document& document, Analysis& analysis, Dialogs& dialogs, QObject* parent);

    /// For the parts list.
    void setPrices(const PriceList& prices) { m_prices = prices; }

    const QList<QAction*>& actions() const { return m_actions; }

Q_SIGNALS:
    /// For the status line: what was written.
    void message(const QString& text);

private:
    struct Export {
        QString text;  ///< in the menu
        QString title; ///< of the file dialog
        QString filter;
        QString ending; ///< of the suggested name: "-wires.csv"
        std::function<Result<void>(const QString& path)> write;
    };

    void add(Export one);
    void askAndWrite(const Export& one);
    Result<void> writeChart(const QString& path) const;
    Result<void> writeFindings(const QString& path) const;

    Document& m_document;
    Analysis& m_analysis;
    Dialogs& m_dialogs;
    PriceList m_prices;
    QList<QAction*> m_actions;
};

} // namespace pumpwright
