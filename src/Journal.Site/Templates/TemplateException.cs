namespace Journal.Site.Templates;

/// <summary>A fault in a template: the file, and line and column from 1.</summary>
public sealed class TemplateException : Exception
{
    /// <summary>A fault at a place.</summary>
    public TemplateException(string file, int line, int column, string message)
        : base($"{file}:{line}:{column}: {message}")
    {
    }

    /// <summary>A fault of the whole set, such as a template that is missing.</summary>
    public TemplateException(string message)
        : base(message)
    {
    }

    /// <inheritdoc/>
    public TemplateException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    /// <summary>A fault without words.</summary>
    public TemplateException()
    {
    }
}
