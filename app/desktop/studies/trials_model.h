#pragma once

#include <QAbstractTableModel>

#include <string>
#include <vector>

namespace pumpwright {

class Document;

/// The trials of the circuit, numbered as in the results; a name is changed in place.
class TrialsModel final : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Number, Name, ColumnCount };

    explicit TrialsModel(Document& document, QObject* parent = nullptr);

    const std::string& idAt(int row) const { return m_rows[static_cast<std::size_t>(row)].id; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    struct Row {
        std::string id;
        std::string name;
        friend bool operator==(const Row&, const Row&) = default;
    };
    void readCircuit();

    Document& m_document;
    std::vector<Row> m_rows;
};

} // namespace pumpwright
