package org.tidewright.web.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;

/** Lines along which a quantity over a rectangle has one value: marching squares over an even grid. */
final class Contours {
    private final double[][] values;
    private final double width;
    private final double height;

    /** A piece of a line within one cell of the grid. */
    record Piece(double x1, double y1, double x2, double y2) {
        double middleX() {
            return (x1 + x2) / 2;
        }

        double middleY() {
            return (y1 + y2) / 2;
        }
    }

    /**
     * Asks for the quantity at every corner of the grid.
     *
     * @param columns of cells
     * @param rows of cells
     */
    Contours(double width, double height, int columns, int rows, DoubleBinaryOperator quantity) {
        this.width = width;
        this.height = height;
        values = new double[columns + 1][rows + 1];
        for (int i = 0; i <= columns; i++) {
            for (int j = 0; j <= rows; j++) {
                values[i][j] = quantity.applyAsDouble(width * i / columns, height * j / rows);
            }
        }
    }

    double least() {
        double least = Double.POSITIVE_INFINITY;
        for (double[] column : values) {
            for (double value : column) {
                least = Math.min(least, value);
            }
        }
        return least;
    }

    double most() {
        double most = Double.NEGATIVE_INFINITY;
        for (double[] column : values) {
            for (double value : column) {
                most = Math.max(most, value);
            }
        }
        return most;
    }

    /** All pieces of the lines of one value. */
    List<Piece> at(double level) {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i + 1 < values.length; i++) {
            for (int j = 0; j + 1 < values[i].length; j++) {
                cell(i, j, level, pieces);
            }
        }
        return pieces;
    }

    /** Where the line crosses the four sides of a cell: two crossings make a piece, four make two. */
    private void cell(int i, int j, double level, List<Piece> pieces) {
        double[][] corners = {{i, j}, {i + 1, j}, {i + 1, j + 1}, {i, j + 1}};
        List<double[]> crossings = new ArrayList<>();
        for (int side = 0; side < 4; side++) {
            double[] from = corners[side];
            double[] to = corners[(side + 1) % 4];
            double here = values[(int) from[0]][(int) from[1]];
            double there = values[(int) to[0]][(int) to[1]];
            if (here < level != there < level) {
                double share = (level - here) / (there - here);
                crossings.add(new double[] {
                    from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1]),
                });
            }
        }
        for (int k = 0; k + 1 < crossings.size(); k += 2) {
            double[] a = crossings.get(k);
            double[] b = crossings.get(k + 1);
            pieces.add(new Piece(x(a[0]), y(a[1]), x(b[0]), y(b[1])));
        }
    }

    private double x(double column) {
        return width * column / (values.length - 1);
    }

    private double y(double row) {
        return height * row / (values[0].length - 1);
    }
}
