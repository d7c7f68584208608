#pragma once

#include <QWidget>

class QLabel;
class QLineEdit;

namespace pumpwright {

class Document;
class Selection;

/// Finds parts, wires and hoses while one types: the first match is selected and brought into view, Return
/// goes on to the next, Shift+Return back.
class FindField final : public QWidget {
    Q_OBJECT

public:
    FindField(Document& document, Selection& selection, QWidget* parent = nullptr);

    QLineEdit& field() { return *m_field; }
    /// "2 of 5", "nothing found", or empty.
    QString state() const;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void show(int match);

    Document& m_document;
    Selection& m_selection;
    int m_match = 0;
    QLineEdit* m_field;
    QLabel* m_state;
};

} // namespace pumpwright
