#pragma once

#include <QList>
#include <QObject>

class QAction;
class QMenu;
class QToolBar;

namespace pumpwright {

class CircuitView;
class Document;
class Selection;

/// Actions on the canvas: undo, clipboard, turning, connecting, zooming. What can't be done now is grey.
class EditActions final : public QObject {
    Q_OBJECT

public:
    EditActions(Document& document, Selection& selection, CircuitView& view, QObject* parent = nullptr);

    void fillEditMenu(QMenu& menu);
    void fillPlaceMenu(QMenu& menu);
    void fillZoomMenu(QMenu& menu);
    void fillToolBar(QToolBar& bar);

private:
    QAction* newAction(const QString& text, const QString& icon, const QKeySequence& keys,
                       const QString& tip);
    void makeHistory(Document& document);
    void makeClipboard();
    void makeShaping();
    void makeLabelling();
    void makeConnecting();
    void makeZooming();
    void updateEnabled();

    Document& m_document;
    Selection& m_selection;
    CircuitView& m_view;
    QAction* m_undo = nullptr;
    QAction* m_redo = nullptr;
    QAction* m_cut = nullptr;
    QAction* m_copy = nullptr;
    QAction* m_paste = nullptr;
    QAction* m_duplicate = nullptr;
    QAction* m_selectAll = nullptr;
    QAction* m_rotate = nullptr;
    QAction* m_mirror = nullptr;
    QAction* m_delete = nullptr;
    QAction* m_moveLabel = nullptr;
    QAction* m_placeLabels = nullptr;
    QList<QAction*> m_arrange;
    QAction* m_select = nullptr;
    QAction* m_wire = nullptr;
    QAction* m_hose = nullptr;
    QAction* m_zoomIn = nullptr;
    QAction* m_zoomOut = nullptr;
    QAction* m_actualSize = nullptr;
    QAction* m_fit = nullptr;
};

} // namespace pumpwright
