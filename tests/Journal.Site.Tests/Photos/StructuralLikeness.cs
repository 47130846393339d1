using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace Journal.Site.Tests.Photos;

/// <summary>
/// SSIM by its published formula: Wang, Bovik, Sheikh and Simoncelli, “Image quality assessment: from error visibility
/// to structural similarity”, IEEE Transactions on Image Processing 13 (2004), equation 13, with K1 = 0.01, K2 = 0.03 and
/// L = 255, as the mean over windows of 8 by 8 (their section III.C names such windows as an earlier choice), on luma.
/// </summary>
internal static class StructuralLikeness
{
    private const int Window = 8;
    private const double C1 = 0.01 * 255 * 0.01 * 255;
    private const double C2 = 0.03 * 255 * 0.03 * 255;

    public static double Of(Image<Rgb24> one, Image<Rgb24> other)
    {
        Assert.Equal((one.Width, one.Height), (other.Width, other.Height));
        var (a, b) = (Luma(one), Luma(other));
        var (sum, count) = (0.0, 0);
        for (var y = 0; y + Window <= one.Height; y += 4)
        {
            for (var x = 0; x + Window <= one.Width; x += 4)
            {
                sum += OfWindow(a, b, x, y);
                count++;
            }
        }

        return sum / count;
    }

    private static double OfWindow(double[][] a, double[][] b, int left, int top)
    {
        const double n = Window * Window;
        var (sumA, sumB, sumAA, sumBB, sumAB) = (0.0, 0.0, 0.0, 0.0, 0.0);
        for (var y = top; y < top + Window; y++)
        {
            for (var x = left; x < left + Window; x++)
            {
                sumA += a[y][x];
                sumB += b[y][x];
                sumAA += a[y][x] * a[y][x];
                sumBB += b[y][x] * b[y][x];
                sumAB += a[y][x] * b[y][x];
            }
        }

        var (meanA, meanB) = (sumA / n, sumB / n);
        var (varA, varB, cov) = ((sumAA / n) - (meanA * meanA), (sumBB / n) - (meanB * meanB), (sumAB / n) - (meanA * meanB));
        return ((2 * meanA * meanB) + C1) * ((2 * cov) + C2) / (((meanA * meanA) + (meanB * meanB) + C1) * (varA + varB + C2));
    }

    private static double[][] Luma(Image<Rgb24> image)
    {
        var luma = new double[image.Height][];
        image.ProcessPixelRows(rows =>
        {
            for (var y = 0; y < rows.Height; y++)
            {
                var row = rows.GetRowSpan(y);
                luma[y] = new double[row.Length];
                for (var x = 0; x < row.Length; x++)
                {
                    luma[y][x] = (0.299 * row[x].R) + (0.587 * row[x].G) + (0.114 * row[x].B);
                }
            }
        });
        return luma;
    }
}
